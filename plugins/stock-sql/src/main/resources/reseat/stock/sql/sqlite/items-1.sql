-- The lines of a stock, for shops that have no tables of their own.
-- serves: order numbers and ids, with | between them.
-- on_hand is text, because SQLite counts broken numbers as binary fractions.
-- expires is such as 2026-06-30.
create table ${tables}item (
    id text primary key not null check (length(id) between 1 and 200),
    kind text not null check (kind in ('part', 'screw', 'consumable', 'tool')),
    name text not null check (length(name) <= 500),
    serves text not null check (length(serves) between 1 and 4000),
    on_hand text not null check (on_hand glob '[0-9]*' and on_hand not glob '*[^0-9.]*'),
    unit text not null check (length(unit) <= 40),
    lot text check (length(lot) <= 200),
    expires text check (expires is date(expires)),
    place text check (length(place) <= 200)
)
