/**
 * <thalweg-valley>: one valley of a standing-seam roof, laid out while its figures are typed.
 *
 *   <script src="https://SERVICE/thalweg-valley.js" async></script>
 *   <thalweg-valley units="in" cover="16"></thalweg-valley>
 *
 * Attributes: `service` (where it asks; default: where this script came from), `units` (`in` or `mm`), and what a field starts
 * with, by the field's name below. Every answer is sent on as an event `thalweg-answer` with `detail.request` and `detail.answer`.
 * It does no layout maths: it asks the service and shows what that says. It follows the page's `color-scheme`;
 * `--thalweg-accent` sets its colour.
 */
(() => {
  'use strict';

  const HOME = new URL('.', document.currentScript.src);
  const PAUSE_MS = 200;
  const PATIENCE = 5;
  const MM_PER_INCH = 25.4; // by definition: international inch, 1959

  const UNITS = {
    in: { length: 'in', area: 'ft2', mass: 'lb' },
    mm: { length: 'mm', area: 'm2', mass: 'kg' },
  };

  /** What is asked: `pointer` is its place in the request, `start` what stands there before anything is typed. */
  const FIELDS = [
    { name: 'pitch-left', legend: 'Corner', label: 'Pitch, left plane', pointer: '#/corner/pitches/0', start: '6:12' },
    { name: 'pitch-right', legend: 'Corner', label: 'Pitch, right plane', pointer: '#/corner/pitches/1', start: '6:12' },
    { name: 'corner', legend: 'Corner', label: 'Corner in plan', mark: '°', pointer: '#/corner/planAngleDeg', start: '90',
      hint: 'Between the two eaves, measured from outside the house.' },
    { name: 'run', legend: 'Corner', label: 'Eave run', pointer: '#/corner/run', length: true, start: { in: '144', mm: '3600' },
      hint: 'Level, along the left eave as it would run on past the corner.' },
    { name: 'cover', legend: 'Metal', label: 'Panel cover', pointer: '#/panel/cover', length: true, start: { in: '18', mm: '450' } },
    { name: 'coil-width', legend: 'Metal', label: 'Coil width of the pan', pointer: '#/valleyPan/coilWidth', length: true, optional: true },
    { name: 'hold-back', legend: 'Metal', label: 'Hold-back of the panels', pointer: '#/valleyPan/holdBack', length: true, optional: true },
    { name: 'rain', legend: 'Metal', label: 'Rain in an hour', pointer: '#/climate/rainfall', length: true, optional: true,
      hint: 'Empty: the water is not worked out.' },
  ];

  const EDGES = { eave: 'the eave', ridge: 'the ridge', headWall: 'the wall' };
  const SEVERITIES = { note: 'Note', warning: 'Warning', stop: 'Stop' };

  /** An element with attributes and children; text is always text, never markup. */
  function make(tag, attributes = {}, ...children) {
    const element = document.createElement(tag);
    Object.entries(attributes).forEach(([name, value]) => element.setAttribute(name, value));
    element.append(...children);
    return element;
  }

  /** A figure without a unit mark, as the service reads one: `18`, `12.75`, `3 1/2`. NaN for all else. */
  function plain(text) {
    const parts = /^(?:(\d+(?:\.\d+)?)|(?:(\d+) +)?(\d+)\/(\d+))$/.exec(text.trim());
    return parts === null ? NaN : parts[1] !== undefined ? Number(parts[1]) : Number(parts[2] ?? 0) + parts[3] / parts[4];
  }

  /** The same length in the other unit. What carries its own marks means the same in both. */
  function converted({ text, unit }, to) {
    const figure = plain(text);
    if (unit === to || Number.isNaN(figure)) {
      return text;
    }
    return String(to === 'mm' ? Number((figure * MM_PER_INCH).toFixed(2)) : Number((figure / MM_PER_INCH).toFixed(4)));
  }

  /** What was typed as it goes into the request; the service says what it can't read. */
  const said = (text) => (/^-?\d+(\.\d+)?$/.test(text.trim()) ? Number(text) : text);

  const many = (count, one) => `${count} ${one}${count === 1 ? '' : 's'}`;

  const style = new CSSStyleSheet();
  style.replaceSync(`
    :host {
      --ink: light-dark(#161616, #ececec);
      --quiet: light-dark(#565656, #b4b4b4);
      --ground: light-dark(#fff, #171717);
      --line: light-dark(#767676, #8c8c8c);
      --hair: light-dark(#d4d4d4, #3d3d3d);
      --accent: var(--thalweg-accent, light-dark(#a4400c, #f3a06b));
      display: block; container-type: inline-size; color: var(--ink); background: var(--ground);
      font: 1rem/1.5 system-ui, sans-serif; text-align: start;
    }
    :host([hidden]), [hidden] { display: none; }
    * { box-sizing: border-box; }
    .status { margin: 0; font-size: 1.125rem; font-weight: 600; min-height: 1.5em; text-wrap: pretty; overflow-wrap: anywhere; }
    @container (min-width: 50rem) {
      .frame { display: grid; grid-template: auto 1fr / 19rem minmax(0, 1fr); column-gap: 2.5rem; }
      form { grid-row: 1 / 3; }
    }
    @container (max-width: 49.99rem) {
      .status { position: sticky; bottom: 0; background: var(--ground); padding: .5rem 0; margin-top: 1rem; border-top: 1.5px solid var(--ink); }
      input { scroll-margin-bottom: 6rem; }
    }
    form { display: grid; gap: 1.25rem; align-content: start; }
    fieldset { border: 0; border-top: 1.5px solid var(--ink); margin: 0; padding: .75rem 0 0; min-width: 0; display: grid; gap: .75rem; }
    @container (min-width: 30rem) and (max-width: 49.99rem) { fieldset.fields { grid-template-columns: 1fr 1fr; } }
    legend { font-weight: 600; padding: 0 .5rem 0 0; }
    .choice { grid-auto-flow: column; justify-content: start; gap: 1.5rem; }
    .choice label { display: flex; gap: .5rem; align-items: center; min-height: 1.75rem; }
    input { font: inherit; color: inherit; accent-color: var(--accent); }
    input[type=radio] { width: 1.1rem; height: 1.1rem; margin: 0; }
    .field > label { display: block; }
    .entry { display: flex; align-items: center; gap: .5rem; }
    .entry input { flex: 1; min-width: 0; min-height: 2.5rem; padding: .25rem .6rem; background: transparent;
      border: 1px solid var(--line); border-radius: 2px; font-variant-numeric: tabular-nums; }
    .entry input::placeholder { color: var(--quiet); opacity: 1; }
    .entry input[aria-invalid=true] { border: 2px solid var(--accent); }
    .mark { color: var(--quiet); min-width: 1.75rem; }
    .hint, small { color: var(--quiet); font-size: .8125rem; line-height: 1.35; margin: .2rem 0 0; }
    .fault { color: var(--accent); font-size: .875rem; line-height: 1.4; margin: .25rem 0 0; overflow-wrap: anywhere; }
    :focus-visible { outline: 3px solid var(--accent); outline-offset: 2px; }
    button { font: inherit; color: var(--ground); background: var(--accent); border: 0; border-radius: 2px; min-height: 2.5rem;
      padding: .25rem 1rem; cursor: pointer; }
    .trouble { border-inline-start: 4px solid var(--accent); padding-inline-start: .75rem; margin: .75rem 0; overflow-wrap: anywhere; }
    .trouble p { margin: 0 0 .5rem; }
    .results[aria-busy=true] { opacity: .6; }
    h3 { font-size: 1rem; margin: 1.5rem 0 .5rem; border-top: 1.5px solid var(--ink); padding-top: .75rem; }
    table { border-collapse: collapse; width: 100%; font-variant-numeric: tabular-nums; }
    caption { position: absolute; clip-path: inset(50%); width: 1px; height: 1px; overflow: hidden; white-space: nowrap; }
    th, td { text-align: start; vertical-align: top; padding: .35rem .5rem .35rem 0; border-bottom: 1px solid var(--hair); }
    th { font-weight: 400; color: var(--quiet); }
    thead th { color: var(--ink); font-weight: 600; }
    td { overflow-wrap: anywhere; }
    .sides th:first-child { width: 40%; }
    .sides { table-layout: fixed; }
    .exact { display: block; color: var(--quiet); font-size: .8125rem; line-height: 1.3; }
    figure { margin: 1rem 0 0; background: #fff; color: #000; border: 1px solid var(--hair); padding: .75rem; color-scheme: light; overflow-x: auto; }
    figure svg { display: block; width: 100%; min-width: 40rem; height: auto; }
    ul { margin: 0; padding: 0; list-style: none; display: grid; gap: .6rem; }
    li b { color: var(--accent); }
    .cautions li { font-size: .875rem; line-height: 1.45; padding-inline-start: .9rem; position: relative; }
    .cautions li::before { content: ''; position: absolute; inset-inline-start: 0; top: .6em; width: .45rem; border-top: 1.5px solid var(--accent); }
  `);

  class Valley extends HTMLElement {
    #units = 'in';
    #typed = new Map();
    #entries = new Map();
    #asked = null;
    #timer = 0;
    #tries = 0;

    connectedCallback() {
      if (this.shadowRoot === null) {
        this.attachShadow({ mode: 'open' }).adoptedStyleSheets = [style];
        this.#build();
      }
      this.#ask();
    }

    disconnectedCallback() {
      this.#drop();
    }

    get #service() {
      const given = this.getAttribute('service');
      return given === null ? HOME : new URL(given.endsWith('/') ? given : given + '/', document.baseURI);
    }

    #part(selector) {
      return this.shadowRoot.querySelector(selector);
    }

    // The form.

    #build() {
      this.#units = this.getAttribute('units') === 'mm' ? 'mm' : 'in';
      const form = make('form', { novalidate: '' }, this.#choice(), this.#fields('Corner'), this.#fields('Metal'));
      form.addEventListener('submit', (event) => {
        event.preventDefault();
        this.#ask();
      });
      const results = make('div', { class: 'results', hidden: '' });
      const told = make('div', {}, make('div', { class: 'trouble', hidden: '' }), results);
      this.shadowRoot.append(make('div', { class: 'frame' }, form, make('p', { class: 'status', role: 'status' }), told));
      this.#showUnits();
    }

    #choice() {
      const radio = (unit, name) => {
        const input = make('input', { type: 'radio', name: 'units', value: unit });
        input.checked = unit === this.#units;
        input.addEventListener('change', () => this.#switchTo(unit));
        return make('label', {}, input, name);
      };
      return make('fieldset', { class: 'choice' }, make('legend', {}, 'Units'), radio('in', 'Inches'), radio('mm', 'Millimetres'));
    }

    #fields(legend) {
      const fields = FIELDS.filter((field) => field.legend === legend).map((field) => this.#field(field));
      return make('fieldset', { class: 'fields' }, make('legend', {}, legend), ...fields);
    }

    #field(field) {
      const { name } = field;
      const start = this.getAttribute(name) ?? field.start?.[this.#units] ?? field.start ?? '';
      const hint = field.hint ?? (field.optional ? 'Empty: the service’s own.' : '');
      const input = make('input', { id: name, name, autocomplete: 'off', spellcheck: 'false', 'aria-describedby': `${name}-hint ${name}-fault` });
      input.value = start;
      input.required = !field.optional;
      this.#typed.set(name, { text: start, unit: this.#units });
      this.#entries.set(name, input);
      input.addEventListener('input', () => {
        this.#typed.set(name, { text: input.value, unit: this.#units });
        this.#later();
      });
      return make('div', { class: 'field' },
        make('label', { for: name }, field.label),
        make('div', { class: 'entry' }, input, make('span', { class: 'mark' }, field.mark ?? '')),
        make('p', { class: 'hint', id: `${name}-hint` }, hint),
        make('p', { class: 'fault', id: `${name}-fault`, hidden: '' }));
    }

    #switchTo(unit) {
      this.#units = unit;
      FIELDS.filter((field) => field.length).forEach(({ name }) => {
        const input = this.#entries.get(name);
        input.value = converted(this.#typed.get(name), unit);
        input.placeholder = '';
      });
      this.#showUnits();
      this.#ask();
    }

    #showUnits() {
      FIELDS.filter((field) => field.length).forEach(({ name }) => {
        this.#entries.get(name).nextSibling.textContent = this.#units;
      });
    }

    // The question.

    #request() {
      const text = (name) => this.#entries.get(name).value;
      const request = {
        units: UNITS[this.#units],
        corner: {
          pitches: [text('pitch-left'), text('pitch-right')],
          planAngleDeg: said(text('corner')),
          run: said(text('run')),
        },
        panel: { cover: said(text('cover')) },
      };
      const pan = {};
      if (text('coil-width').trim() !== '') {
        pan.coilWidth = said(text('coil-width'));
      }
      if (text('hold-back').trim() !== '') {
        pan.holdBack = said(text('hold-back'));
      }
      if (Object.keys(pan).length > 0) {
        request.valleyPan = pan;
      }
      if (text('rain').trim() !== '') {
        request.climate = { rainfall: said(text('rain')) };
      }
      return request;
    }

    /** Whoever is still typing is not interrupted, and an older answer never shows after a newer question. */
    #later() {
      this.#drop();
      this.#part('.results').setAttribute('aria-busy', 'true');
      this.#timer = setTimeout(() => this.#ask(), PAUSE_MS);
    }

    #drop() {
      clearTimeout(this.#timer);
      this.#asked?.abort();
    }

    async #ask() {
      this.#drop();
      const { signal } = (this.#asked = new AbortController());
      this.#part('.results').setAttribute('aria-busy', 'true');
      let tell;
      try {
        tell = await this.#hear(this.#request(), signal);
      } catch (failure) {
        const why = signal.aborted ? '' : await this.#whyUnheard(failure);
        tell = () => this.#trouble('No answer', why);
      }
      if (!signal.aborted) {
        tell();
      }
    }

    /** What the service says, as what there is to do about it. */
    async #hear(request, signal) {
      const response = await this.#post('v1/valleys', request, 'application/json', signal);
      if (response.status === 503 || response.status === 429) {
        return () => this.#wait(Number(response.headers.get('Retry-After')) || 2);
      }
      if (!response.ok) {
        const problem = await response.json().catch(() => null);
        return () => this.#refuse(response.status, problem);
      }
      const answer = await response.json();
      const drawing = await this.#drawing(request, signal).catch(() => null);
      return () => {
        this.#show(answer, drawing);
        this.dispatchEvent(new CustomEvent('thalweg-answer', { detail: { request, answer }, bubbles: true, composed: true }));
      };
    }

    #post(path, request, accept, signal) {
      return fetch(new URL(path, this.#service), {
        method: 'POST',
        headers: { 'Content-Type': 'application/json', Accept: accept },
        body: JSON.stringify(request),
        credentials: 'omit',
        signal,
      });
    }

    /** The valley drawn; figures are shown without it where it does not come. */
    async #drawing(request, signal) {
      const response = await this.#post('v1/valleys?view=valleys&sheet=1', request, 'image/svg+xml', signal);
      if (!response.ok) {
        return null;
      }
      const svg = new DOMParser().parseFromString(await response.text(), 'image/svg+xml').documentElement;
      if (svg.localName !== 'svg') {
        return null;
      }
      svg.setAttribute('role', 'img');
      return make('figure', { tabindex: 0, 'aria-label': 'Drawing of the valley' }, document.importNode(svg, true));
    }

    /** A browser does not say why it kept an answer to itself; a question whose answer nobody reads tells whether anybody is there. */
    async #whyUnheard(failure) {
      if (failure instanceof SyntaxError) {
        return `What came from ${this.#service} is not an answer of this service.`;
      }
      try {
        await fetch(new URL('v1/limits', this.#service), { mode: 'no-cors', credentials: 'omit' });
      } catch {
        return `The service at ${this.#service} can not be reached.`;
      }
      return `The service at ${this.#service} does not let pages of ${location.origin} read its answers. Its operator has to allow that origin.`;
    }

    // What is told.

    #wait(seconds) {
      this.#tries += 1;
      if (this.#tries > PATIENCE) {
        this.#tries = 0;
        this.#trouble('The service is busy', 'It has been asked several times. Try again a little later.');
      } else {
        this.#trouble('The service is busy', `It is asked again in ${seconds} s.`);
        this.#timer = setTimeout(() => this.#ask(), 1000 * seconds);
      }
    }

    #trouble(status, ...details) {
      this.#clearFaults();
      this.#hide(status, details);
      const again = make('button', { type: 'button' }, 'Ask again');
      again.addEventListener('click', () => this.#ask());
      this.#part('.trouble').append(again);
    }

    /** Nothing of an earlier answer stays in sight: nobody shall mark from it. */
    #hide(status, details) {
      this.#part('.status').textContent = status;
      this.#part('.results').hidden = true;
      const trouble = this.#part('.trouble');
      trouble.replaceChildren(...details.map((detail) => make('p', {}, detail)));
      trouble.hidden = details.length === 0;
    }

    #refuse(status, problem) {
      this.#clearFaults();
      if (!Array.isArray(problem?.errors)) {
        this.#trouble('No answer', problem?.detail ?? `The service answers with status ${status}.`);
        return;
      }
      const others = [];
      const marked = new Set();
      problem.errors.forEach(({ pointer, detail }) => {
        const field = FIELDS.find((one) => pointer === one.pointer || pointer.startsWith(`${one.pointer}/`));
        if (field === undefined) {
          others.push(detail);
        } else {
          marked.add(field.name);
          this.#fault(field.name, detail);
        }
      });
      if (problem.errors.length === 0) {
        others.push(problem.detail);
      }
      const entries = marked.size === 0 ? '' : `: ${many(marked.size, 'entry').replace('entrys', 'entries')} to mend`;
      this.#hide(`No figures${entries}`, others);
    }

    #fault(name, detail) {
      const told = this.#part(`#${name}-fault`);
      told.textContent = told.hidden ? detail : `${told.textContent} ${detail}`;
      told.hidden = false;
      this.#entries.get(name).setAttribute('aria-invalid', 'true');
    }

    #clearFaults() {
      this.#entries.forEach((input, name) => {
        input.removeAttribute('aria-invalid');
        this.#part(`#${name}-fault`).hidden = true;
      });
    }

    #show({ valleys, used, findings, cautions }, drawing) {
      this.#tries = 0;
      this.#clearFaults();
      this.#hide('', []);
      const [valley] = valleys;
      this.#entries.get('coil-width').placeholder = used.valleyPan.coilWidth;
      this.#entries.get('hold-back').placeholder = used.valleyPan.holdBack;
      const results = this.#part('.results');
      results.replaceChildren(
        ...(drawing === null ? [] : [drawing]),
        make('h3', {}, 'Marks'), ...this.#marks(valley),
        make('h3', {}, `Pan, ${many(valley.pieces.length, 'piece')}`), this.#pieces(valley),
        ...(findings.length === 0 ? [] : [make('h3', {}, 'Findings'), make('ul', { class: 'findings' }, ...findings.map(finding))]),
        make('h3', {}, 'Cautions'), make('ul', { class: 'cautions' }, ...cautions.map(({ text }) => make('li', {}, text))));
      results.removeAttribute('aria-busy');
      results.hidden = false;
      const noted = findings.length === 0 ? '' : `, ${many(findings.length, 'finding')}`;
      this.#part('.status').textContent =
        `Valley ${valley.length.tape} long at ${valley.slopeDeg}°, ${many(valley.pieces.length, 'piece')}${noted}`;
    }

    #marks({ length, slopeDeg, bendDeg, sides }) {
      const both = (label, of) => row(label, ...sides.map((side) => of(side) ?? '–'));
      const square = (end) => end && `${end.up.tape} up, ${end.out.tape} out`;
      const [{ bottom, top }] = sides;
      const edge = ({ kind }) => EDGES[kind] ?? kind;
      return [
        make('table', { class: 'sides' }, make('caption', {}, 'The valley'), make('tbody', {},
          row('True length', figure(length), ''),
          row('Slope', `${slopeDeg}°`, ''),
          row('Bend between the planes', `${bendDeg}°`, ''))),
        make('table', { class: 'sides' }, make('caption', {}, 'Both sides, seen from the foot looking up'),
          make('thead', {}, make('tr', {}, make('td', {}), make('th', { scope: 'col' }, 'Left'), make('th', { scope: 'col' }, 'Right'))),
          make('tbody', {},
            both('Angle from the eave', (side) => `${side.angleFromEaveDeg}°`),
            both('Rise across the cover', (side) => figure(side.riseAcrossCover)),
            both('Hold-back', (side) => figure(side.holdBack)),
            both('Pan under the panels', (side) => figure(side.coverUnderPanel)),
            both('Chalk line', (side) => figure(side.chalkLine?.length)),
            both(`… starts, along ${edge(bottom)}`, (side) => figure(side.chalkLine?.lower.along)),
            both('… or by square from the low', (side) => square(side.chalkLine?.lower)),
            both(`… ends, along ${edge(top)}`, (side) => figure(side.chalkLine?.upper.along)),
            both('… or by square from the low', (side) => square(side.chalkLine?.upper)))),
      ];
    }

    #pieces({ pieces }) {
      const heads = ['Piece', 'From the foot', 'Blank', 'Lap'].map((head) => make('th', { scope: 'col' }, head));
      return make('table', { class: 'pieces' }, make('caption', {}, 'Pieces of the pan, from the foot up'),
        make('thead', {}, make('tr', {}, ...heads)),
        make('tbody', {}, ...pieces.map((piece) => row(piece.mark, figure(piece.from), figure(piece.length), figure(piece.lap)))));
    }
  }

  const row = (label, ...cells) =>
    make('tr', {}, make('th', { scope: 'row' }, label), ...cells.map((cell) => make('td', {}, cell)));

  /** A mark for the tape, and the figure it was rounded from. */
  function figure(length) {
    if (length === undefined) {
      return undefined;
    }
    const told = new DocumentFragment();
    told.append(length.tape);
    if (!length.tape.startsWith(length.value)) {
      told.append(make('span', { class: 'exact' }, String(length.value)));
    }
    return told;
  }

  const finding = ({ code, severity, message, source }) =>
    make('li', { 'data-code': code, 'data-severity': severity },
      make('b', {}, `${SEVERITIES[severity] ?? severity}. `), message, ...(source ? [' ', make('small', {}, `Source: ${source}.`)] : []));

  customElements.define('thalweg-valley', Valley);
})();
