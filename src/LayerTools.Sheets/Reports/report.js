'use strict';
(() => {
  const $ = id => document.getElementById(id);
  const list = (selector, root = document) => [...root.querySelectorAll(selector)];
  const files = list('.overview tbody tr').map(row => ({ row, section: $(row.dataset.file), states: row.dataset.states.split(' ') }));
  // Spaces that keep a number and its unit together are spaces to those who type.
  const plain = text => text.toLowerCase().replace(/\s+/g, ' ').trim();
  const words = new Map();
  const holds = (element, sought) => {
    if (!words.has(element)) words.set(element, plain(element.textContent));
    return words.get(element).includes(sought);
  };

  // Groups around a layer that is shown stay, so that everyone sees where it lies.
  const narrowLayers = (rows, sought) => {
    const wanted = [];
    let shown = 0;
    for (const row of rows.reverse()) {
      const depth = Number(row.dataset.depth);
      const found = holds(row, sought);
      row.hidden = !found && !wanted[depth];
      if (found) shown++;
      wanted[depth] = false;
      if (!row.hidden && depth > 0) wanted[depth - 1] = true;
    }
    return shown;
  };

  const narrow = () => {
    const sought = plain($('find').value);
    const which = $('which').value;
    let filesShown = 0, hits = 0;
    for (const { row, section, states } of files) {
      const named = holds(row.cells[1], sought);
      const rest = named ? '' : sought;
      let inside = 0;
      for (const fact of list('.fact', section)) {
        const found = holds(fact, rest);
        if (fact.tagName === 'TR') fact.hidden = !found;
        if (found) inside++;
      }
      inside += narrowLayers(list('tr.layer', section), rest);
      row.hidden = section.hidden = (which !== '' && !states.includes(which)) || (!named && inside === 0);
      if (row.hidden) continue;
      filesShown++;
      if (!named) hits += inside;
    }
    $('told').textContent = filesShown + ' of ' + files.length + (files.length === 1 ? ' file' : ' files') +
      (sought === '' || hits === 0 ? '' : ', ' + hits + (hits === 1 ? ' line' : ' lines') + ' in them') + (filesShown === 0 ? '. Nothing is like that.' : '.');
    if (hits > 0 && filesShown <= 3) for (const file of files) if (!file.row.hidden) file.section.open = true;
  };

  const keyOf = (row, column) => {
    const cell = row.cells[column];
    return cell.dataset.key === undefined ? cell.textContent : cell.dataset.key === '' ? -Infinity : Number(cell.dataset.key);
  };
  const compare = (one, other) => typeof one === 'string' ? one.localeCompare(other, undefined, { numeric: true }) : one === other ? 0 : one < other ? -1 : 1;
  const sort = (table, heading) => {
    const column = heading.cellIndex;
    const turn = heading.getAttribute('aria-sort') === 'ascending' ? -1 : 1;
    for (const other of heading.parentNode.cells) other.removeAttribute('aria-sort');
    heading.setAttribute('aria-sort', turn === 1 ? 'ascending' : 'descending');
    const body = table.tBodies[0];
    body.append(...[...body.rows].sort((one, other) => turn * compare(keyOf(one, column), keyOf(other, column))));
  };

  for (const table of list('table.sortable')) {
    for (const heading of list('thead th', table)) {
      const button = document.createElement('button');
      button.type = 'button';
      button.append(...heading.childNodes);
      heading.append(button);
      button.addEventListener('click', () => sort(table, heading));
    }
  }

  const reveal = () => {
    const target = $(decodeURIComponent(location.hash.slice(1)));
    const section = target && target.closest('details');
    if (!section) return;
    section.open = true;
    target.scrollIntoView();
    if (target === section) section.querySelector('summary').focus({ preventScroll: true });
  };
  addEventListener('hashchange', reveal);
  document.addEventListener('click', event => {
    const link = event.target.closest('a[href^="#file-"]');
    if (link && link.hash === location.hash) reveal();
  });

  let closed = [];
  addEventListener('beforeprint', () => {
    closed = files.map(file => file.section).filter(section => !section.open);
    for (const section of closed) section.open = true;
  });
  addEventListener('afterprint', () => { for (const section of closed) section.open = false; });

  for (const [id, open] of [['open-all', true], ['close-all', false]]) {
    $(id).addEventListener('click', () => { for (const file of files) file.section.open = open; });
  }
  $('controls').addEventListener('submit', event => event.preventDefault());
  $('find').addEventListener('input', narrow);
  $('which').addEventListener('change', narrow);
  $('controls').hidden = false;
  narrow();
  reveal();
})();
