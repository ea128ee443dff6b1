// Plain data with a key set or left out, since nothing is written of what nobody has said.

/**
 * The same object with a key set, or without it where there is no value.
 *
 * @param whole - plain data
 * @param key - one that may be left out
 * @param value - what it is to be; undefined leaves it out
 * @returns a copy
 */
export function withOrWithout<Whole extends object, Key extends keyof Whole>(
  whole: Whole,
  key: Key,
  value: Whole[Key] | undefined,
): Whole {
  const { [key]: _, ...rest } = whole;
  return (value === undefined ? rest : { ...rest, [key]: value }) as Whole;
}
