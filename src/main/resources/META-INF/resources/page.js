/** The page's own example: a whole roof, laid out, drawn and totalled by the service. */
(() => {
  'use strict';

  const part = (id) => document.getElementById(id);
  const request = part('request');

  /** Totals worth a line here; the answer has them all. */
  const TOTALS = {
    panels: 'Panels',
    roofArea: 'Roof area',
    orderedArea: 'Panel area to order',
    waste: 'Waste',
    mass: 'Mass of the panels',
    valleys: 'Valleys',
    clips: 'Clips',
    trimPieces: 'Pieces of trim',
    underlaymentRolls: 'Rolls of underlayment',
  };

  /** Unit codes of UN/ECE Recommendation 20 as people write them; a count has none. */
  const UNITS = { C62: '', FTK: 'ft²', MTK: 'm²', INH: 'in', LBR: 'lb', KGM: 'kg', P1: '%', MMT: 'mm', MTR: 'm', FOT: 'ft', CMT: 'cm' };

  function make(tag, ...children) {
    const element = document.createElement(tag);
    element.append(...children);
    return element;
  }

  const tell = (text) => (part('job-told').textContent = text);

  const post = (path, accept) =>
    fetch(path, { method: 'POST', headers: { 'Content-Type': 'application/json', Accept: accept }, body: request.value });

  /** Buttons wait for the answer to the last one. They stay where a keyboard finds them. */
  let busy = false;
  async function once(work) {
    if (busy) {
      return;
    }
    busy = true;
    setWaiting(true);
    try {
      await work();
    } catch {
      refuse('The service can not be reached.');
    } finally {
      busy = false;
      setWaiting(false);
    }
  }

  const setWaiting = (waiting) =>
    document.querySelectorAll('#job button').forEach((button) => button.setAttribute('aria-disabled', String(waiting)));

  function refuse(text, errors = []) {
    tell(text);
    part('laid').hidden = true;
    part('problems').hidden = errors.length === 0;
    part('problems').replaceChildren(...errors.map(({ pointer, detail }) => make('li', make('code', pointer), ' ', detail)));
    request.toggleAttribute('aria-invalid', errors.length > 0);
  }

  async function refuseFor(response) {
    const problem = await response.json().catch(() => ({}));
    const later = response.status === 503 || response.status === 429 ? ' Try again a little later.' : '';
    const many = problem.errorCount > 1 ? `${problem.errorCount} things in the request are to be mended.` : undefined;
    refuse(many ?? problem.detail ?? `The service answers with status ${response.status}.${later}`, problem.errors);
  }

  async function layOut() {
    tell('Laying out …');
    const response = await post('v1/layouts', 'application/json');
    if (!response.ok) {
      await refuseFor(response);
      return;
    }
    const answer = await response.json();
    const map = await drawn();
    refuse('');
    part('map').hidden = map === null;
    part('map').replaceChildren(...(map === null ? [] : [map]));
    part('totals').replaceChildren(...totals(answer));
    part('findings').replaceChildren(...answer.findings.map(({ severity, message }) => make('li', make('code', severity), ' ', message)));
    part('laid').hidden = false;
    tell(`${answer.panels.length} panels on ${answer.roof.planes.length} planes; ${answer.findings.length} findings.`);
  }

  function totals(answer) {
    return answer.totals
      .filter(({ item, of }) => item in TOTALS && of === undefined)
      .map(({ item, quantity, unit }) => {
        const name = make('th', TOTALS[item]);
        name.scope = 'row';
        const cell = make('td', `${quantity.toLocaleString('en')} ${UNITS[unit] ?? unit}`.trim());
        cell.dataset.item = item;
        return make('tr', name, cell);
      });
  }

  /** The roof seen from above. */
  async function drawn() {
    const response = await post('v1/layouts?view=map&sheet=1', 'image/svg+xml');
    if (!response.ok) {
      return null;
    }
    const svg = new DOMParser().parseFromString(await response.text(), 'image/svg+xml').documentElement;
    if (svg.localName !== 'svg') {
      return null;
    }
    svg.setAttribute('role', 'img');
    return document.importNode(svg, true);
  }

  async function fetchPacket() {
    tell('Drawing the packet …');
    const response = await post('v1/layouts', 'application/pdf');
    if (!response.ok) {
      await refuseFor(response);
      return;
    }
    const link = make('a', 'packet');
    link.href = URL.createObjectURL(await response.blob());
    link.download = 'packet.pdf';
    link.click();
    setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
    tell('The packet is saved as packet.pdf.');
  }

  async function restore() {
    const response = await fetch('layouts-demo.request.json');
    if (!response.ok) {
      await refuseFor(response);
      return;
    }
    request.value = await response.text();
    refuse('');
  }

  /** A plain number goes as one; anything else as it is on the tape. */
  const measured = (id) => {
    const typed = part(id).value.trim();
    return /^\d+(\.\d+)?$/.test(typed) ? Number(typed) : typed;
  };

  /** The eaves of an L, from its front left corner on, in one request that says nothing else. */
  function ofFiveNumbers() {
    const [front, side, wing, depth] = ['five-front', 'five-side', 'five-wing', 'five-depth'].map(measured);
    const outline = [[0, 0], [front, 0], [front, side], [wing, side], [wing, depth], [0, depth]];
    return `{
  "units": { "length": "ft", "area": "ft2", "mass": "lb" },
  "roof": {
    "footprint": {
      "outline": ${JSON.stringify(outline)},
      "pitch": ${JSON.stringify(part('five-pitch').value.trim())}
    }
  },
  "panel": { "cover": 1.5 }
}
`;
  }

  part('five').addEventListener('submit', (event) => {
    event.preventDefault();
    once(() => {
      request.value = ofFiveNumbers();
      return layOut();
    });
  });
  part('job').addEventListener('submit', (event) => {
    event.preventDefault();
    once(layOut);
  });
  part('packet').addEventListener('click', () => once(fetchPacket));
  part('restore').addEventListener('click', () => once(restore));

  const script = new URL('thalweg-valley.js', document.baseURI);
  part('tags').textContent = `<script src="${script}" async></script>\n<thalweg-valley units="in" cover="16"></thalweg-valley>`;
  once(restore);
})();
