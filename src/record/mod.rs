//! What is kept: recipes, their revisions, and the file formats.
