const TAG = /<[a-z](?:[^"'>]|"[^"]*"|'[^']*')*>/gi;
const VALUE = /"[^"]*"/g;

/** HTML whose attributes hold no angle brackets: they may stand there as they are, and the builder leaves them, but then
 * a tag can't be told from a text that looks like one without reading all that comes before. */
export const quietAttributes = (html: string): string =>
  html.replace(TAG, (tag) => tag.replace(VALUE, (value) => value.replaceAll('<', '&lt;').replaceAll('>', '&gt;')));
