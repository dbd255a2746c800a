// Finds an animal and hides what was not asked for. Without it every row stands on the page, in sections with anchors. It never changes an answer.
(() => {
  const find = document.querySelector('.find');
  addEventListener('beforeprint', () => document.querySelectorAll('details').forEach(one => { one.open = true; }));
  const last = document.documentElement.dataset.void, now = new Date(), two = n => String(n).padStart(2, '0');
  if (last && `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}` > last) {
    const p = document.createElement('p');
    p.className = 'void';
    p.textContent = 'Void: this page held until ' + new Date(last + 'T12:00').toLocaleDateString('en-GB', { day: 'numeric', month: 'long', year: 'numeric' }) + '. Draw it up again.';
    document.querySelector('main').prepend(p);
  }
  if (!find) return;
  find.hidden = false;
  const box = find.querySelector('input'), said = find.querySelector('output'), cut = document.querySelector('.cut');
  const plain = text => text.toLowerCase().replace(/[^\p{L}\p{N}]/gu, '');
  const rows = [...document.querySelectorAll('.row')].map(row => ({ row, number: plain(row.querySelector('b').textContent), tag: plain(row.querySelector('.who i')?.textContent ?? ''), asked: { a: row.dataset.a, m: row.dataset.m, d: row.dataset.d } }));
  const groups = [...document.querySelectorAll('.group')], chips = [...find.querySelectorAll('.chip')];
  const isOn = chip => chip.getAttribute('aria-pressed') === 'true';
  const isTyped = (one, typed) => !typed || one.number.startsWith(typed) || (typed.length > 3 && one.tag && (one.tag.endsWith(typed) || typed.endsWith(one.tag)));
  const show = () => {
    const typed = plain(box.value), want = {};
    for (const chip of chips) if (isOn(chip) && chip.dataset.k) (want[chip.dataset.k] ||= []).push(chip.dataset.v);
    let seen = 0;
    for (const one of rows) {
      const ok = isTyped(one, typed) && Object.entries(want).every(([key, values]) => values.includes(one.asked[key]));
      one.row.hidden = !ok;
      seen += ok;
    }
    for (const group of groups) group.hidden = !group.querySelector('.row:not([hidden])');
    said.textContent = seen === rows.length ? rows.length + (rows.length === 1 ? ' animal' : ' animals') : seen + ' of ' + rows.length;
    cut.textContent = seen === rows.length ? '' : 'Not the whole list: ' + seen + ' of ' + rows.length + ' animals are shown.';  // on paper only
  };
  find.addEventListener('submit', e => e.preventDefault());
  find.addEventListener('click', e => {
    const chip = e.target.closest('.chip');
    if (!chip) return;
    chip.setAttribute('aria-pressed', !isOn(chip));
    document.body.classList.toggle('picture-only', chips.some(one => one.hasAttribute('data-picture') && isOn(one)));
    show();
  });
  box.addEventListener('input', () => { show(); find.scrollIntoView(); });
  box.addEventListener('keydown', e => {
    if (e.key === 'Escape') { box.value = ''; show(); }
    if (e.key === 'Enter') {
      const first = rows.find(one => !one.row.hidden)?.row;
      if (first) { e.preventDefault(); first.querySelector('a, b').focus(); first.scrollIntoView({ block: 'center' }); }
    }
  });
  addEventListener('keydown', e => { if (e.key === '/' && e.target !== box) { e.preventDefault(); box.focus(); box.select(); } });
  show();
})();
