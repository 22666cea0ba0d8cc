/** Where a command under test speaks to: `hear` goes into its surroundings, and `said` gathers what came. */
export function listener() {
  const said = { out: '', err: '' };
  const hear = {
    out: (text: string) => {
      said.out += text;
    },
    err: (text: string) => {
      said.err += text;
    },
  };
  return { said, hear };
}
