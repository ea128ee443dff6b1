// What a section names in `into` when it empties into the collector's inlet flange. It stands apart
// from the schema so that a worker that solves shops doesn't carry the schema along.

export const COLLECTOR_ID = 'collector';
