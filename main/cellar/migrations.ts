/**
 * The book's schema, one step after another. A step that was released is never edited: what has
 * to change comes as a new step. Numbers are what `user_version` shows after the step.
 */
export interface Migration {
  readonly version: number
  readonly does: string
  readonly sql: string
}

export const migrations: readonly Migration[] = [
  {
    version: 10,
    does: 'keep moves, jars, batches and settings; derive pantry and bottle lots',
    sql: `
      CREATE TABLE setting (
        key TEXT PRIMARY KEY,
        value TEXT NOT NULL CHECK (json_valid(value))
      ) STRICT, WITHOUT ROWID;

      CREATE TABLE jar (
        id TEXT PRIMARY KEY,
        name TEXT NOT NULL,
        shape TEXT NOT NULL CHECK (shape IN ('jar', 'demijohn', 'crock', 'flask')),
        capacity_ml REAL NOT NULL CHECK (capacity_ml > 0),
        is_retired INTEGER NOT NULL CHECK (is_retired IN (0, 1))
      ) STRICT;

      CREATE TABLE batch (
        id TEXT PRIMARY KEY,
        name TEXT NOT NULL,
        colour TEXT NOT NULL,
        note TEXT NOT NULL,
        opened_at TEXT NOT NULL
      ) STRICT;

      -- What was recorded together and is undone together. An undo is a group of its own that
      -- names the group it takes back. The key makes a repeated request harmless.
      CREATE TABLE move_group (
        id TEXT PRIMARY KEY,
        request_key TEXT NOT NULL UNIQUE,
        recorded_at TEXT NOT NULL,
        undoes TEXT UNIQUE REFERENCES move_group (id)
      ) STRICT;

      -- The ledger. Rows are only ever added: an amendment is a row with the next version, and a
      -- struck move is one whose newest row has no payload.
      CREATE TABLE move (
        seq INTEGER PRIMARY KEY AUTOINCREMENT,
        id TEXT NOT NULL,
        version INTEGER NOT NULL CHECK (version >= 1),
        group_id TEXT NOT NULL REFERENCES move_group (id),
        payload TEXT CHECK (payload IS NULL OR json_valid(payload)),
        kind TEXT AS (payload ->> '$.kind'),
        batch_id TEXT AS (payload ->> '$.batchId') REFERENCES batch (id),
        UNIQUE (id, version)
      ) STRICT;
      CREATE INDEX move_group_moves ON move (group_id);
      CREATE TRIGGER move_is_never_changed BEFORE UPDATE ON move
        BEGIN SELECT RAISE(ABORT, 'moves are only ever added'); END;
      CREATE TRIGGER move_is_never_deleted BEFORE DELETE ON move
        BEGIN SELECT RAISE(ABORT, 'moves are only ever added'); END;

      -- Each move as it stands now; seq is that of its first recording, which orders equal instants.
      CREATE VIEW current_move AS
        SELECT newest.id, first.seq, newest.version, first.group_id, recorded.recorded_at,
               newest.payload, newest.kind, newest.batch_id
        FROM move AS newest
        JOIN move AS first ON first.id = newest.id AND first.version = 1
        JOIN move_group AS recorded ON recorded.id = first.group_id
        WHERE newest.payload IS NOT NULL
          AND NOT EXISTS (
            SELECT 1 FROM move AS later
            WHERE later.id = newest.id AND later.version > newest.version
          );

      CREATE VIEW reading AS
        SELECT id, payload ->> '$.at' AS at, batch_id, payload ->> '$.jarId' AS jar_id,
               payload -> '$.reading' AS reading
        FROM current_move WHERE kind = 'read';

      -- Derived from the ledger; "rebuild" makes them again.
      CREATE TABLE pantry_lot (
        id TEXT PRIMARY KEY,
        goods TEXT NOT NULL CHECK (json_valid(goods)),
        bought_at TEXT NOT NULL,
        bought_g REAL NOT NULL,
        left_g REAL NOT NULL,
        price_minor INTEGER
      ) STRICT;
      CREATE TABLE bottle_lot (
        id TEXT PRIMARY KEY,
        batch_id TEXT NOT NULL,
        bottled_at TEXT NOT NULL,
        bottle_size_ml REAL NOT NULL,
        filled_count INTEGER NOT NULL,
        count INTEGER NOT NULL CHECK (count BETWEEN 0 AND filled_count)
      ) STRICT;
    `,
  },
  {
    version: 20,
    does: "keep the maker's copies of library fruit, and fruit of their own",
    sql: `
      CREATE TABLE fruit (
        id TEXT PRIMARY KEY,
        origin TEXT NOT NULL CHECK (origin IN ('edited', 'own')),
        facts TEXT NOT NULL CHECK (json_valid(facts)),
        changed_at TEXT NOT NULL
      ) STRICT;
    `,
  },
  {
    version: 30,
    does: 'keep drafts, house recipes with their versions, and the plans of started batches',
    sql: `
      CREATE TABLE draft (
        id TEXT PRIMARY KEY,
        content TEXT NOT NULL CHECK (json_valid(content)),
        created_at TEXT NOT NULL,
        changed_at TEXT NOT NULL
      ) STRICT;

      CREATE TABLE recipe (
        id TEXT PRIMARY KEY,
        name TEXT NOT NULL,
        note TEXT NOT NULL,
        from_batch_id TEXT REFERENCES batch (id)
      ) STRICT;
      -- A version once kept stays as it is: batches were made by it.
      CREATE TABLE recipe_version (
        recipe_id TEXT NOT NULL REFERENCES recipe (id) ON DELETE CASCADE,
        version INTEGER NOT NULL CHECK (version >= 1),
        kept_at TEXT NOT NULL,
        spec TEXT NOT NULL CHECK (json_valid(spec)),
        PRIMARY KEY (recipe_id, version)
      ) STRICT, WITHOUT ROWID;
      CREATE TRIGGER recipe_version_is_never_changed BEFORE UPDATE ON recipe_version
        BEGIN SELECT RAISE(ABORT, 'versions of a recipe are only ever added'); END;

      -- What a batch was started with; the recipe may be gone by the time it is read.
      CREATE TABLE plan (
        batch_id TEXT PRIMARY KEY REFERENCES batch (id),
        started_at TEXT NOT NULL,
        spec TEXT NOT NULL CHECK (json_valid(spec)),
        moves TEXT NOT NULL CHECK (json_valid(moves)),
        recipe_id TEXT,
        recipe_version INTEGER
      ) STRICT;
      CREATE INDEX plan_recipe ON plan (recipe_id);
    `,
  },
  {
    version: 40,
    does: 'keep the shelves that bottles stand on; derive which bottles stand where',
    sql: `
      CREATE TABLE shelf (
        id TEXT PRIMARY KEY,
        name TEXT NOT NULL,
        temperature_c REAL NOT NULL,
        light TEXT NOT NULL CHECK (light IN ('dark', 'dim', 'daylight')),
        is_retired INTEGER NOT NULL CHECK (is_retired IN (0, 1))
      ) STRICT;

      -- Derived from the ledger like the lots; no shelf is a place too.
      CREATE TABLE bottle_place (
        bottle_lot_id TEXT NOT NULL REFERENCES bottle_lot (id) ON DELETE CASCADE,
        shelf_id TEXT REFERENCES shelf (id),
        count INTEGER NOT NULL CHECK (count > 0)
      ) STRICT;
      CREATE UNIQUE INDEX bottle_place_once ON bottle_place (bottle_lot_id, ifnull(shelf_id, ''));
      INSERT INTO bottle_place (bottle_lot_id, count)
        SELECT id, count FROM bottle_lot WHERE count > 0;
    `,
  },
  {
    version: 50,
    does: "keep the maker's own sheets of labels, and how labels were printed last",
    sql: `
      CREATE TABLE label_sheet (
        id TEXT PRIMARY KEY,
        content TEXT NOT NULL CHECK (json_valid(content))
      ) STRICT;
      CREATE TABLE label_style (
        only INTEGER PRIMARY KEY CHECK (only = 1),
        content TEXT NOT NULL CHECK (json_valid(content))
      ) STRICT;
    `,
  },
  {
    version: 60,
    does: 'keep the region, wishes and plans of seasons, and what of them is bought',
    sql: `
      CREATE TABLE season_region (
        only INTEGER PRIMARY KEY CHECK (only = 1),
        content TEXT NOT NULL CHECK (json_valid(content))
      ) STRICT;
      CREATE TABLE season_wishes (
        only INTEGER PRIMARY KEY CHECK (only = 1),
        content TEXT NOT NULL CHECK (json_valid(content))
      ) STRICT;

      -- A plan once kept stays as it was: later seasons look back on it.
      CREATE TABLE season_plan (
        id TEXT PRIMARY KEY,
        kept_at TEXT NOT NULL,
        content TEXT NOT NULL CHECK (json_valid(content))
      ) STRICT;
      CREATE INDEX season_plan_kept ON season_plan (kept_at);

      -- What is bought of a purchase list, by the line's key. The purchase itself is a move; bottles,
      -- corks and labels have none.
      CREATE TABLE purchase_tick (
        line_key TEXT PRIMARY KEY,
        move_id TEXT,
        content TEXT NOT NULL CHECK (json_valid(content))
      ) STRICT;
    `,
  },
  {
    version: 70,
    does: 'keep what a maker put off, and what calendars were given',
    sql: `
      CREATE TABLE put_off (
        task_id TEXT PRIMARY KEY,
        until TEXT NOT NULL,
        put_off_at TEXT NOT NULL
      ) STRICT;

      -- What calendars were told last of each entry: a newer version has to say that it is newer,
      -- and what is no more has to be cancelled. Rows stay, so that no number is given twice.
      CREATE TABLE calendar_entry (
        uid TEXT PRIMARY KEY,
        entry TEXT NOT NULL CHECK (json_valid(entry)),
        sequence INTEGER NOT NULL CHECK (sequence >= 0),
        is_cancelled INTEGER NOT NULL CHECK (is_cancelled IN (0, 1)),
        changed_at TEXT NOT NULL
      ) STRICT;

      -- The secret of the address at which the calendar is served; no row, no address.
      CREATE TABLE calendar_feed (
        only INTEGER PRIMARY KEY CHECK (only = 1),
        secret TEXT NOT NULL
      ) STRICT;

      -- The last day on which the maker was reminded.
      CREATE TABLE reminder (
        only INTEGER PRIMARY KEY CHECK (only = 1),
        day TEXT NOT NULL
      ) STRICT;
    `,
  },
  {
    version: 71,
    does: 'keep when an opened spirit was last seen shut; honey has a price in a season',
    sql: `
      -- By pantry lot. Nothing evaporates by it: it only ends a question.
      CREATE TABLE spirit_shut (
        lot_id TEXT PRIMARY KEY,
        shut_at TEXT NOT NULL
      ) STRICT;
    `,
  },
  {
    version: 82,
    does: 'know bottles brought in from elsewhere, and the batches that came with them',
    sql: `
      -- A batch that was opened together with its moves is there only while one of them stands:
      -- taking the moves back takes it back as well.
      CREATE TABLE batch_with_moves (
        batch_id TEXT PRIMARY KEY REFERENCES batch (id)
      ) STRICT;
    `,
  },
]
