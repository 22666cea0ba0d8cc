/** What an entry says, without where it says it; its free text without blank lines round it. */
export const saidOf = (value: unknown): unknown =>
  JSON.parse(
    JSON.stringify(value, (key, inner) => {
      if (['place', 'keys', 'file', 'bodyLine'].includes(key) && typeof inner === 'object') return undefined;
      if (key === 'file' && typeof inner === 'string') return undefined;
      if (key === 'bodyLine') return undefined;
      return key === 'body' ? String(inner).trim() : inner;
    }),
  );
