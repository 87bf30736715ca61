//! All words of the app.
