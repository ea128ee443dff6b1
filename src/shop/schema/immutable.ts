// A document is never changed in place: an edit makes a new one. This type says so all the way down.

/** `T` with every property and every array element read-only. */
export type Immutable<T> = T extends readonly (infer Item)[]
  ? readonly Immutable<Item>[]
  : T extends object
    ? { readonly [Key in keyof T]: Immutable<T[Key]> }
    : T;
