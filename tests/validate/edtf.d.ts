/** The reference library brings no types; this much of it is asked. */
declare module 'edtf' {
  const parse: (text: string) => { readonly min: number; readonly max: number };
  export default parse;
}
