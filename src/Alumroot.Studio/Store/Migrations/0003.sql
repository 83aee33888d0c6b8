-- The search holds one text for each subject, under a number that grows with the time of its latest entry, so that the newest are found first without sorting.
DROP TABLE entry_text;
CREATE VIRTUAL TABLE subject_text USING fts5 (words, marks, tokenize = 'unicode61 remove_diacritics 2', prefix = '1 2 3');
ALTER TABLE subject ADD COLUMN search_row INTEGER NULL;
CREATE UNIQUE INDEX subject_search_row ON subject (search_row);
-- The highest number of a year, or of the lots, without reading the others.
CREATE INDEX subject_number ON subject (substr(subject, 1, 3), CAST(ltrim(substr(subject, 4), '-') AS INTEGER));
