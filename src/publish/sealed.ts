import { armor, Decrypter, Encrypter, generateX25519Identity, identityToRecipient } from 'age-encryption';

/** What opens a sealed file: words, or a key such as `AGE-SECRET-KEY-1…`. */
export type Opener = { readonly words: string } | { readonly key: string };

/** That the words or the key are not those of this file. */
export class WrongWords extends Error {}
/** That the file isn't whole, or isn't a sealed file. */
export class Damaged extends Error {}

/** A fresh X25519 key, from the machine's own source of chance. */
export const freshKey = (): Promise<string> => generateX25519Identity();

/** Encrypts in the age format (age-encryption.org/v1): words by scrypt with the library's own work factor, a key by
 * X25519. */
export async function seal(content: Uint8Array | string, by: Opener): Promise<Uint8Array> {
  const encrypter = new Encrypter();
  if ('words' in by) encrypter.setPassphrase(by.words);
  else encrypter.addRecipient(await identityToRecipient(by.key));
  return await encrypter.encrypt(content);
}

/** The same as text, as the age command reads and writes it. */
export const asText = (sealed: Uint8Array): string => armor.encode(sealed);

const TEXT = /^-----BEGIN AGE ENCRYPTED FILE-----\r?\n([A-Za-z0-9+/=\r\n]+)-----END AGE ENCRYPTED FILE-----$/;

/** Undoes `asText`. The library's own way takes a number a character, which a telephone has no memory for.
 * @throws {Damaged} when it isn't such a text. */
export function fromText(text: string): Uint8Array {
  const body = TEXT.exec(text.trim())?.[1];
  if (body === undefined) throw new Damaged('it isn’t whole');
  try {
    return bytesOf(body);
  } catch (error) {
    throw new Damaged(String(error));
  }
}

/** Base64 by the engine itself where it can; the DOM's types don't know that yet. */
export function bytesOf(base64: string): Uint8Array<ArrayBuffer> {
  const native = (Uint8Array as unknown as { readonly fromBase64?: (text: string) => Uint8Array<ArrayBuffer> })
    .fromBase64;
  if (native !== undefined) return native(base64);
  const binary = atob(base64.replace(/[\r\n]/g, ''));
  const bytes = new Uint8Array(binary.length);
  for (let at = 0; at < binary.length; at += 1) bytes[at] = binary.charCodeAt(at);
  return bytes;
}

/** Decrypts.
 * @throws {WrongWords} when this doesn't open it.
 * @throws {Damaged} when the file has changed since it was sealed. */
export async function unseal(sealed: Uint8Array, by: Opener): Promise<Uint8Array> {
  const decrypter = new Decrypter();
  try {
    if ('words' in by) decrypter.addPassphrase(by.words);
    else decrypter.addIdentity(by.key);
  } catch (error) {
    throw new WrongWords(String(error));
  }
  try {
    return await decrypter.decrypt(sealed);
  } catch (error) {
    if (/no identity matched/.test(String(error))) throw new WrongWords(String(error));
    throw new Damaged(String(error));
  }
}
