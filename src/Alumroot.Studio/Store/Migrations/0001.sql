CREATE TABLE entry (
  sequence INTEGER PRIMARY KEY,
  id TEXT NOT NULL UNIQUE,
  subject TEXT NOT NULL,
  document TEXT NOT NULL,
  document_version INTEGER NOT NULL,
  payload_json TEXT NOT NULL,
  at_unix_ms INTEGER NOT NULL,
  at_zone_minutes INTEGER NOT NULL,
  corrects_id TEXT NULL,
  checksum_sha256 TEXT NOT NULL,
  chain_sha256 TEXT NOT NULL
) STRICT;
CREATE INDEX entry_subject ON entry (subject, sequence);

CREATE TRIGGER entry_is_never_changed BEFORE UPDATE ON entry BEGIN SELECT RAISE(ABORT, 'an entry is never changed'); END;
CREATE TRIGGER entry_is_never_removed BEFORE DELETE ON entry BEGIN SELECT RAISE(ABORT, 'an entry is never removed'); END;

CREATE TABLE entry_photo (
  sequence INTEGER NOT NULL REFERENCES entry (sequence),
  photo_sha256 TEXT NOT NULL,
  PRIMARY KEY (sequence, photo_sha256)
) STRICT, WITHOUT ROWID;

CREATE TABLE entry_use (
  sequence INTEGER NOT NULL REFERENCES entry (sequence),
  lot TEXT NOT NULL,
  PRIMARY KEY (lot, sequence)
) STRICT, WITHOUT ROWID;

CREATE TABLE subject (
  subject TEXT PRIMARY KEY,
  class TEXT NOT NULL,
  title TEXT NOT NULL,
  stage TEXT NOT NULL,
  first_unix_ms INTEGER NOT NULL,
  first_zone_minutes INTEGER NOT NULL,
  last_unix_ms INTEGER NOT NULL,
  last_zone_minutes INTEGER NOT NULL,
  entry_count INTEGER NOT NULL
) STRICT;
CREATE INDEX subject_last ON subject (last_unix_ms DESC);

CREATE TABLE kept_aside (
  id TEXT NOT NULL,
  checksum_sha256 TEXT NOT NULL,
  entry_json TEXT NOT NULL,
  aside_unix_ms INTEGER NOT NULL,
  PRIMARY KEY (id, checksum_sha256)
) STRICT;

CREATE VIRTUAL TABLE entry_text USING fts5 (words, subject UNINDEXED, tokenize = 'unicode61 remove_diacritics 2', prefix = '2 3');
