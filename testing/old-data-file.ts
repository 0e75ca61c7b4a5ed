import Database from "better-sqlite3";

/**
 * A data file as version 1 wrote it, made by SQL that is frozen here and never follows the migrations: one
 * practice with one hall whose document lacks everything that may be left out.
 */
export function oldDataFileVersion1(file: string): void {
  const database = new Database(file);
  database.exec(`
    pragma application_id = 1212238924;
    create table practice (practice text not null primary key, version integer not null,
      document text not null) strict;
    create table hall (practice text not null references practice (practice), id text not null,
      version integer not null, document text not null,
      constraint hall_key primary key (practice, id)) strict;
    create table class (practice text not null references practice (practice), id text not null,
      version integer not null, document text not null,
      constraint class_key primary key (practice, id)) strict;
    create table action (practice text not null, action text not null, what text not null,
      answer text not null, at text not null,
      constraint action_key primary key (practice, action)) strict;
    insert into practice values ('oriel', 3, '{"name":"Oriel Tamsett","currency":"GBP",
      "zone":"Europe/London","locale":"en-GB","units":"metric"}');
    insert into hall values ('oriel', 'loft', 2, '{"name":"Loft","outline":[[0,0],[5,0],[5,4],[0,4]],
      "mat":{"length":1.8,"width":0.6},"gaps":{"side":0.4,"end":0.2,"wall":0.3}}');
    pragma user_version = 1;
  `);
  database.close();
}

/** The same file as version 2 wrote it: with a class and what happened in it, and no plans yet. */
export function oldDataFileVersion2(file: string): void {
  oldDataFileVersion1(file);
  const database = new Database(file);
  database.exec(`
    create table happened (practice text not null, id text not null, version integer not null,
      document text not null, constraint happened_key primary key (practice, id),
      constraint happened_class foreign key (practice, id) references class (practice, id)
      on delete cascade) strict;
    insert into class values ('oriel', 'tuesday', 1, '{"name":"Tuesday","weekday":2,"start":"18:30",
      "minutes":{"setUp":10,"class":60,"packDown":10,"travel":0,"preparation":0,"admin":0},
      "costs":{"travel":"0","music":"0","cover":"0","other":"0","perHead":"0"},
      "prices":{"single":"10","passes":[]},"mix":{"single":1},"heads":8,
      "year":{"from":"2026-09-01","until":"2027-07-31","closures":[],"fixedPerYear":"0"}}');
    insert into happened values ('oriel', 'tuesday', 4, '{"sessions":[]}');
    pragma user_version = 2;
  `);
  database.close();
}

/** The same file as version 3 wrote it: with a plan, and no running record yet. */
export function oldDataFileVersion3(file: string): void {
  oldDataFileVersion2(file);
  const database = new Database(file);
  database.exec(`
    create table plan (practice text not null references practice (practice), id text not null,
      version integer not null, document text not null,
      constraint plan_key primary key (practice, id)) strict;
    insert into plan values ('oriel', 'week', 2, '{"own":[]}');
    insert into action values ('oriel', 'action-old', 'a-digest', '[]', '2026-11-25T09:45:00Z');
    pragma user_version = 3;
  `);
  database.close();
}
