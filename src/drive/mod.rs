//! Room: drive.
