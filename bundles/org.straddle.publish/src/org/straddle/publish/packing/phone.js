(function () {
  'use strict';
  var key = 'straddle-packing-' + document.body.dataset.key;
  var boxes = Array.prototype.slice.call(document.querySelectorAll('input[data-id]'));
  var who = document.getElementById('who'), kind = document.getElementById('kind'), open = document.getElementById('open');
  var note = document.getElementById('note'), count = document.getElementById('count');
  var kinds = Array.prototype.map.call(kind.options, function (option) { return option.value; });
  var memory = { who: '', ticks: {} };
  var keeps = true;

  function say(text) { note.textContent = text; }

  function load() {
    try {
      var kept = JSON.parse(window.localStorage.getItem(key) || '{}');
      if (kept && typeof kept === 'object') {
        memory.who = typeof kept.who === 'string' ? kept.who : '';
        memory.ticks = kept.ticks && typeof kept.ticks === 'object' ? kept.ticks : {};
      }
      window.localStorage.setItem(key, JSON.stringify(memory));
    } catch (e) {
      keeps = false;
      say(document.body.dataset.none);
    }
  }

  function save() {
    if (!keeps) { return; }
    try {
      window.localStorage.setItem(key, JSON.stringify(memory));
    } catch (e) {
      keeps = false;
      say(document.body.dataset.lost);
    }
  }

  function place(box, what) { return what + ' ' + box.dataset.id; }

  // What this phone says of a box, else what the event said when the page was made.
  function tick(box, what) {
    var own = memory.ticks[place(box, what)];
    if (own) { return own.off ? null : own; }
    return box.hasAttribute('data-' + what + '-at')
      ? { by: box.getAttribute('data-' + what + '-by'), at: box.getAttribute('data-' + what + '-at') } : null;
  }

  function clock(at) {
    var when = new Date(at);
    return isNaN(when) ? '' : when.toLocaleString([], { weekday: 'short', hour: '2-digit', minute: '2-digit' });
  }

  function show() {
    var done = 0, all = 0;
    boxes.forEach(function (box) {
      var there = tick(box, kind.value), row = box.parentNode;
      var meant = kind.value !== 'returned' || box.dataset.owner !== '';
      box.checked = there !== null;
      row.classList.toggle('done', there !== null);
      row.classList.toggle('hide', !meant || open.checked && there !== null);
      row.querySelector('.who').textContent = (kind.value === 'returned' && box.dataset.owner ? document.body.dataset.to.replace('#1', box.dataset.owner) + ' ' : '')
        + (there ? there.by + ' ' + clock(there.at) : '');
      done += meant && there !== null ? 1 : 0;
      all += meant ? 1 : 0;
    });
    count.textContent = document.body.dataset.of.replace('#1', done).replace('#2', all);
  }

  function quoted(text) {
    // A leading sign would let a spreadsheet take a name for a formula.
    text = String(text === undefined || text === null ? '' : text).replace(/[\r\n]+/g, ' ');
    return '"' + (/^[=+\-@\t]/.test(text) ? "'" : '') + text.replace(/"/g, '""') + '"';
  }

  function table() {
    var lines = ['id,item,tick,stop,by,at'];
    boxes.forEach(function (box) {
      kinds.forEach(function (what) {
        var own = memory.ticks[place(box, what)], stop = what.slice(0, 4) === 'car-' ? what.slice(4) : '';
        if (own) {
          lines.push([quoted(box.dataset.id), quoted(box.dataset.item), stop === '' ? what : 'car', quoted(stop),
            own.off ? '""' : quoted(own.by), own.off ? '-' : own.at].join(','));
        }
      });
    });
    return lines.join('\n') + '\n';
  }

  // A page that lies on the phone may not reach the clipboard; then the chosen text is copied in the old way.
  function copy() {
    var text = document.getElementById('text');
    function old() {
      text.focus();
      text.select();
      if (document.execCommand('copy')) { say(document.body.dataset.copied); }
    }
    if (navigator.clipboard) {
      navigator.clipboard.writeText(text.value).then(function () { say(document.body.dataset.copied); }, old);
    } else {
      old();
    }
  }

  boxes.forEach(function (box) {
    box.addEventListener('change', function () {
      if (who.value.trim() === '') {
        say(document.body.dataset.name);
        box.checked = !box.checked;
        who.focus();
        return;
      }
      memory.ticks[place(box, kind.value)] = box.checked
        ? { by: who.value.trim(), at: new Date().toISOString().replace(/\.\d+Z$/, 'Z') } : { off: true };
      save();
      show();
    });
  });
  who.addEventListener('input', function () { memory.who = who.value.trim(); save(); say(''); });
  kind.addEventListener('change', show);
  open.addEventListener('change', show);
  document.getElementById('send').addEventListener('click', function () {
    var text = table();
    document.getElementById('text').value = text;
    document.getElementById('file').href = 'data:text/csv;charset=utf-8,' + encodeURIComponent(text);
    document.getElementById('sent').classList.remove('hide');
    if (navigator.share) {
      navigator.share({ title: document.title, text: text }).catch(function () { });
    } else {
      copy();
    }
    document.getElementById('sent').scrollIntoView();
  });
  document.getElementById('copy').addEventListener('click', copy);
  load();
  who.value = memory.who;
  show();
})();
