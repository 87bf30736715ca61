//! Reads a recipe file as the app exports it and prints the solved balance as JSON.

fn main() {}
