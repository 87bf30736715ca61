//! The trade, pure: what was typed is checked, solved, and every figure can show its working.
