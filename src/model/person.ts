/** A person as an entry names one: an id in people/, the owner, initials nobody has resolved, or free text. */
export type PersonRef =
  | { readonly is: 'entry'; readonly id: string }
  | { readonly is: 'owner' }
  | { readonly is: 'initials'; readonly text: string }
  | { readonly is: 'text'; readonly text: string };
