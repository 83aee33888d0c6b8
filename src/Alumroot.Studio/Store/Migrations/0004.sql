-- The list of colours asks for these entries alone; they are few among many.
CREATE INDEX entry_swatch ON entry (sequence DESC, subject) WHERE document = 'swatch-read';
