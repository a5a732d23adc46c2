type Search = Readonly<Record<string, unknown>>;

/** A word of the address; undefined when it is not there. A number typed there is a word too. */
export const wordIn = (search: Search, name: string): string | undefined => {
  const value = search[name];
  const text = typeof value === 'number' ? String(value) : value;
  return typeof text === 'string' && text !== '' ? text : undefined;
};

/** The same, left out when it is not there, for search objects that have no undefined members. */
export const optionalWord = <Name extends string>(
  search: Search,
  name: Name,
): Partial<Record<Name, string>> => {
  const value = wordIn(search, name);
  return (value === undefined ? {} : { [name]: value }) as Partial<Record<Name, string>>;
};
