import { CALCULATIONS_OF_VALUES } from '#reckoner/calculations.ts';
import { workOutForm } from '#reckoner/work-out-form.ts';
import { calculationAnswer } from '../views/calculation-answer.ts';

const forms = [...document.querySelectorAll<HTMLFormElement>('form.calc[data-name]')];

for (const form of forms) {
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    keepInAddress(form);
    void work(form);
  });
}
openAddress();

/** The answer by the same modules as on the command line; the clock is the reader's own. */
async function work(form: HTMLFormElement): Promise<void> {
  const calculation = CALCULATIONS_OF_VALUES.find(({ name }) => name === form.dataset['name']);
  if (calculation === undefined) return;
  const answer = await workOutForm(calculation, typedIn(form), { cwd: '', now: new Date() });
  const place = form.querySelector('.answer');
  if (place !== null) place.innerHTML = calculationAnswer(answer).toString();
}

function typedIn(form: HTMLFormElement): ReadonlyMap<string, string> {
  return new Map([...form.querySelectorAll<HTMLInputElement>('input[name]')].map((field) => [field.name, field.value]));
}

/** `?reckon=tape-length&outside-diameter=…#tape-length`, so that a sum can be sent to someone. */
function keepInAddress(form: HTMLFormElement): void {
  const filled = [...typedIn(form)].filter(([, value]) => value.trim() !== '');
  const query = new URLSearchParams([['reckon', form.dataset['name'] ?? ''], ...filled]);
  history.replaceState(null, '', `?${query}#${form.id}`);
}

/** Fills and works out the sum that the address holds. */
function openAddress(): void {
  const query = new URL(location.href).searchParams;
  const form = forms.find((one) => one.dataset['name'] === query.get('reckon'));
  if (form === undefined) return;
  for (const field of form.querySelectorAll<HTMLInputElement>('input[name]')) field.value = query.get(field.name) ?? '';
  void work(form);
  form.scrollIntoView();
}
