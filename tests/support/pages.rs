//! Pages under `docs` that a test makes: compared by the ordinary run, written anew by `nox -s tables`.

use std::path::Path;

/// Fails when the committed page is not what the library says now. With `PINFILM_TABLES=write` writes it instead.
pub fn compare_or_write(name: &str, text: &str) {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("docs").join(name);
    if std::env::var_os("PINFILM_TABLES").is_some_and(|value| value == "write") {
        std::fs::create_dir_all(path.parent().unwrap()).unwrap();
        std::fs::write(&path, text).unwrap();
        return;
    }
    let committed = std::fs::read_to_string(&path).unwrap_or_default().replace("\r\n", "\n");
    let first = committed.lines().zip(text.lines()).find(|(a, b)| a != b);
    assert!(committed == text, "docs/{name} is stale: run `nox -s tables` and commit it. First difference: {first:?}");
}
