// In each page of an opened site: gives the ring back to a worker that the browser put to sleep.
import { ASK, KEPT_AS } from './ring.ts';

navigator.serviceWorker.addEventListener('message', (event) => {
  if (event.data === ASK) event.ports[0]?.postMessage(sessionStorage.getItem(KEPT_AS));
});
navigator.serviceWorker.startMessages();
