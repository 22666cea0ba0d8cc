import { storageYears } from '#compute/climate/storage-years.ts';
import { parseHumidity } from '#validate/scalars/humidity.ts';
import { parseTemperature } from '#validate/scalars/temperature.ts';
import { decimal } from '../words/number.ts';

const form = document.querySelector<HTMLFormElement>('#what-if');
const answer = form?.querySelector('.ans');

if (form !== null && answer != null) {
  const work = () => answer.replaceChildren(whatIf(form));
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    work();
  });
  work();
}

/** This room at another air, as a ratio to its log. */
function whatIf(asked: HTMLFormElement): string {
  const temperature = parseTemperature(typed(asked, 'temperature'));
  if (!temperature.ok) return `${temperature.message} Write it as ${temperature.expected}.`;
  const humidity = parseHumidity(typed(asked, 'humidity'));
  if (!humidity.ok) return `${humidity.message} Write it as ${humidity.expected}.`;
  if (humidity.value <= 0) return 'Wholly dry air has no measure: give a humidity over 0 %.';
  const ratio = storageYears(temperature.value, humidity.value) / Number(asked.dataset['years']);
  return `At ${typed(asked, 'temperature')} and ${typed(asked, 'humidity')} this room would be ${decimal(ratio, 2)} times as good. A comparison of rooms, not a promise about a tape.`;
}

function typed(asked: HTMLFormElement, name: string): string {
  return asked.querySelector<HTMLInputElement>(`[name=${name}]`)?.value.trim() ?? '';
}
