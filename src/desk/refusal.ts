/** That something asked for can't be done as the files are; the sentence is for the owner. */
export class DeskRefusal extends Error {
  readonly status: number;
  constructor(status: number, sentence: string) {
    super(sentence);
    this.status = status;
  }
}
