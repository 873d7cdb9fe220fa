package monochord.song.abc;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import monochord.song.BarDraft;
import monochord.song.Song;
import monochord.song.SongMetre;
import monochord.text.Phrase;
import monochord.text.SafeText;
import monochord.theory.note.Beats;
import monochord.theory.note.Unreadable;

/** Reads one tune of a book as a song. What is not read is among its faults. Source: the ABC standard 2.1. */
public final class AbcReader {
    private static final Pattern FIELD = Pattern.compile("([A-Za-z+]):(?![|:])(.*)");
    private static final Pattern COMMENT = Pattern.compile("(?<!\\\\)%.*");
    private static final Pattern VOICE = Pattern.compile("\\[V:\\s*(\\S+?)\\s*\\]");
    private static final Beats EIGHTH = Beats.of(1, 2);
    private static final Beats SIXTEENTH = Beats.of(1, 4);
    private static final String NO_NAME = "";

    private final AbcState state = new AbcState(null, SongMetre.FREE, AbcKey.none());
    private final Map<String, List<BarDraft>> parts = new LinkedHashMap<>();
    private final Map<String, AbcWords> words = new LinkedHashMap<>();
    private final Set<String> voices = new LinkedHashSet<>();
    private final Set<Phrase> remarks = new LinkedHashSet<>();
    private final List<String> titles = new ArrayList<>();
    private final List<String> below = new ArrayList<>();
    private String composer = NO_NAME;
    private String tempo = NO_NAME;
    private String order = NO_NAME;
    private String part = NO_NAME;
    private String voice = NO_NAME;
    private AbcKey headKey;
    private SongMetre headMetre;
    private boolean inBody;
    private char lastField;

    private AbcReader() {}

    public static Song read(AbcBook book, AbcBook.Tune tune) {
        AbcReader reader = new AbcReader();
        book.header().forEach(reader::line);
        tune.lines().forEach(reader::line);
        return reader.song();
    }

    private void line(AbcBook.BookLine line) {
        state.line = line.number();
        String text = COMMENT.matcher(SafeText.clean(line.text())).replaceAll("");
        Matcher field = FIELD.matcher(text);
        if (field.matches()) {
            field(field.group(1).charAt(0), field.group(2).strip());
        } else if (inBody && !text.isBlank()) {
            notes(text);
        }
    }

    private void field(char name, String value) {
        char which = name == '+' ? lastField : name;
        lastField = which;
        switch (which) {
            case 'T' -> titles.add(SafeText.oneLine(value));
            case 'C' -> composer = composer.isEmpty() ? SafeText.oneLine(value) : composer;
            case 'w' -> words.computeIfAbsent(part, any -> new AbcWords()).line(value, name == '+');
            case 'W' -> below.add(SafeText.oneLine(value));
            case 'Q' -> tempo = tempo.isEmpty() ? value : tempo;
            default -> change(which, value);
        }
    }

    /** A field that may stand in brackets in a line of notes, too. */
    private void change(char name, String value) {
        switch (name) {
            case 'K' -> key(value);
            case 'M' -> metre(value);
            case 'L' -> unit(value);
            case 'P' -> part(value);
            case 'V' -> voice(value.split("\\s", 2)[0]);
            default -> {}
        }
    }

    private void key(String value) {
        Optional<AbcKey> read = AbcKey.parse(value);
        if (read.isEmpty()) {
            if (!inBody
                    || !value.matches("(?:clef|treble|bass|alto|tenor|perc|middle|stafflines|transpose|octave).*")) {
                state.fault(
                        0,
                        Phrase.of("the key \"{0}\" is not read", Phrase.quoted(value)),
                        Phrase.of("write for example {0}", Phrase.typed("K:D")));
            }
        } else if (inBody && !read.get().key().equals(headKey.key())) {
            remarks.add(Phrase.sentence(
                    "The key changes on line {0}; its notes are read so, its numerals stay in the first.", state.line));
        }
        if (value.startsWith("H")) {
            remarks.add(Phrase.sentence("A scale for pipes is read with two sharps."));
        }
        state.key = read.orElse(state.key);
        begin();
    }

    /** The key ends the header. */
    private void begin() {
        if (!inBody) {
            headKey = state.key;
            headMetre = state.metre;
            boolean isShort = !state.metre.isFree() && 4 * state.metre.beats() < 3 * state.metre.value();
            state.unit = state.unit == null ? isShort ? SIXTEENTH : EIGHTH : state.unit;
            inBody = true;
        }
    }

    private void metre(String value) {
        try {
            SongMetre metre = SongMetre.parse(value.replace(" ", ""));
            if (inBody && !metre.equals(headMetre)) {
                remarks.add(Phrase.sentence(
                        "The metre changes on line {0}; its bars are as long as they are.", state.line));
            }
            state.metre = metre;
        } catch (Unreadable unreadable) {
            state.fault(
                    0,
                    Phrase.of("the metre \"{0}\" is not read", Phrase.quoted(value)),
                    Phrase.of("write for example {0}", Phrase.typed("M:3/4")));
        }
    }

    private void unit(String value) {
        Matcher unit = Pattern.compile("(\\d)(?:/(\\d{1,3}))?").matcher(value);
        int under = unit.lookingAt() && unit.group(2) != null ? Integer.parseInt(unit.group(2)) : 1;
        if (!unit.lookingAt() || under < 1 || under > 128 || unit.group(1).equals("0")) {
            state.fault(
                    0,
                    Phrase.of("the length \"{0}\" is not read", Phrase.quoted(value)),
                    Phrase.of("write for example {0}", Phrase.typed("L:1/8")));
        } else {
            state.unit = Beats.of(4L * Integer.parseInt(unit.group(1)), under);
        }
    }

    private void part(String value) {
        if (!inBody) {
            order = value;
        } else {
            closePart();
            part = SafeText.oneLine(value);
        }
    }

    private void voice(String name) {
        voices.add(name);
        voice = name;
    }

    private void closePart() {
        state.closeBar();
        if (!state.bars.isEmpty()) {
            parts.computeIfAbsent(part, any -> new ArrayList<>()).addAll(state.bars);
            state.bars.clear();
        }
    }

    private void notes(String line) {
        Matcher inline = VOICE.matcher(line);
        if (inline.find()) {
            voice(inline.group(1));
        }
        if (voices.size() > 1 && !voice.equals(voices.iterator().next())) {
            return;
        }
        boolean goesOn = line.stripTrailing().endsWith("\\");
        int before = state.bars.size();
        AbcWords below = words.computeIfAbsent(part, any -> new AbcWords());
        state.held.clear();
        new AbcLine(line, state, this::change).read();
        below.music(state.held);
        if (!goesOn) {
            if (!state.bar.isEmpty()) {
                state.bar.endsLine = true;
            } else if (state.bars.size() > before) {
                state.bars.get(state.bars.size() - 1).endsLine = true;
            }
        }
    }

    private Song song() {
        if (!inBody) {
            state.fault(0, Phrase.of("the tune has no key"), Phrase.of("write for example {0}", Phrase.typed("K:D")));
            begin();
        }
        closePart();
        if (voices.size() > 1) {
            state.fault(
                    0,
                    Phrase.of("it has {0} voices; the first is read", voices.size()),
                    Phrase.of("write each voice as a tune of its own to have it read"));
        }
        if (state.isFull()) {
            state.fault(
                    0,
                    Phrase.of("it has more than {0} notes", AbcState.MOST_SOUNDS),
                    Phrase.of("make several tunes of it"));
        }
        return new AbcSong(this).song();
    }

    Song song(AbcSong made) {
        return made.song(headMetre, headKey.key(), AbcTempo.of(tempo, state.unit, headMetre));
    }

    List<String> titles() {
        return titles;
    }

    String composer() {
        return composer;
    }

    String order() {
        return order;
    }

    Map<String, List<BarDraft>> parts() {
        return parts;
    }

    AbcWords words(String name) {
        return words.getOrDefault(name, new AbcWords());
    }

    List<String> below() {
        return below;
    }

    AbcState state() {
        return state;
    }

    Set<Phrase> remarks() {
        return remarks;
    }
}
