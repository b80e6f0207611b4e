-- What is reserved and used, line by line. What is used here is what the own book of the shop does not know of.
-- Quantities are text, because SQLite counts broken numbers as binary fractions.
create table ${tables}held (
    item text primary key not null check (length(item) between 1 and 200),
    reserved text default '0' not null check (reserved glob '[0-9]*' and reserved not glob '*[^0-9.]*'),
    used text default '0' not null check (used glob '[0-9]*' and used not glob '*[^0-9.]*')
);
create table ${tables}reservation (
    seq integer primary key autoincrement,
    id text not null unique check (length(id) between 1 and 200),
    job text not null check (length(job) between 1 and 200),
    state text not null check (state in ('reserved', 'used', 'released'))
);
create index ${tables}reservation_state on ${tables}reservation (state, seq);
create table ${tables}pick (
    reservation text not null references ${tables}reservation (id),
    nr integer not null,
    item text not null check (length(item) between 1 and 200),
    quantity text not null check (quantity glob '[0-9]*' and quantity not glob '*[^0-9.]*'),
    comes_back integer not null check (comes_back in (0, 1)),
    primary key (reservation, nr),
    unique (reservation, item)
)
