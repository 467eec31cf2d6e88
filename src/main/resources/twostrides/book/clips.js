// Clip lists that a page saves, in the forms of the folder clips.
var CLIPLISTS = (function () {
  'use strict';
  function csvCell(t) {
    // As CsvOut.RUNS: what a spreadsheet would run, behind a semicolon too.
    var safe = t.replace(/(^|[;\t\r\n])(?=[ \u00a0"]*[=+\-@\uff1d\uff0b\uff0d\uff20])(?! *[+-]\d+([.,]\d+)? *([;\t\r\n]|$))/g, "$1'");
    return /[",\n\r]/.test(safe) ? '"' + safe.replace(/"/g, '""') + '"' : safe;
  }
  function cue(t) {
    return t.replace(/\s+/g, ' ').replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;');
  }
  function xml(t) {
    return t.replace(/[^\t\n\r\u0020-\uD7FF\uE000-\uFFFD\uD800-\uDFFF]/g, ' ')
      .replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;').replace(/"/g, '&quot;');
  }
  function plain(t) {
    return t.toLowerCase().replace(/[^a-z0-9]+/g, '-').replace(/^-+|-+$/g, '').slice(0, 40) || 'game';
  }
  function time(s) { return KIT.stamp(s) + '.' + ('00' + Math.round(s % 1 * 1000)).slice(-3); }
  function tenths(s) { return String(Math.round(s * 10) / 10); }
  // The game's file beside the list, by the name of the one that is open.
  function file(game) { return encodeURIComponent(VIDEO.nameOf(game)); }

  var forms = {
    csv: function (list) {
      KIT.save('clips.csv', 'text/csv', 'game,start_s,end_s,title\r\n' + list.map(function (c) {
        return [c.game, tenths(c.start), tenths(c.end), c.title].map(csvCell).join(',');
      }).join('\r\n') + '\r\n');
    },
    vtt: function (list) {
      // Chapters belong to one video, so each game gets a file of its own.
      var games = new Map();
      list.forEach(function (c) { games.set(c.game, (games.get(c.game) || []).concat(c)); });
      games.forEach(function (own, g) {
        KIT.save('clips-' + plain(g) + '.vtt', 'text/vtt', 'WEBVTT\n\n' + own
          .sort(function (a, b) { return a.start - b.start; })
          .map(function (c, i, all) {
            // Chapters may not overlap in part, so one ends where the next begins.
            var next = all.slice(i + 1).filter(function (l) { return l.start > c.start; })[0];
            return time(c.start) + ' --> ' + time(next ? Math.min(c.end, next.start) : c.end) + '\n' + cue(c.title) + '\n';
          }).join('\n'));
      });
    },
    xspf: function (list) {
      KIT.save('clips.xspf', 'application/xspf+xml', '<?xml version="1.0" encoding="UTF-8"?>\n'
        + '<playlist version="1" xmlns="http://xspf.org/ns/0/">\n<trackList>\n' + list.map(function (c) {
          return '<track><location>' + xml(file(c.game)) + '#t=' + tenths(c.start) + ',' + tenths(c.end) + '</location>'
            + '<title>' + xml(c.title) + '</title><album>' + xml(c.game) + '</album></track>';
        }).join('\n') + '\n</trackList>\n</playlist>\n');
    },
    m3u: function (list) {
      KIT.save('clips.m3u', 'audio/x-mpegurl', '#EXTM3U\n' + list.map(function (c) {
        return '#EXTINF:' + Math.round(c.end - c.start) + ',' + c.title.replace(/[\s\u0000-\u001f\u007f]+/g, ' ')
          + '\n#EXTVLCOPT:start-time=' + tenths(c.start) + '\n#EXTVLCOPT:stop-time=' + tenths(c.end) + '\n' + file(c.game) + '\n';
      }).join(''));
    }
  };
  return { save: function (clips, form) {
    if (clips.length === 0) { VIDEO.say('None of these rows has a video second.'); return; }
    forms[form](clips.map(function (c) {
      var span = VIDEO.span(c);
      return { game: c.game, title: c.title + (span.doubt ? ', ' + span.doubt : ''), start: span.start, end: span.end };
    }));
  } };
})();
