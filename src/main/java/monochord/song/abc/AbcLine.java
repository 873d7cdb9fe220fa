package monochord.song.abc;

import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import monochord.song.BarDraft;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.note.Beats;
import monochord.theory.note.Pitch;

/** Reads one line of notes. Source: the ABC standard 2.1, section 4. */
final class AbcLine {
    private static final Pattern NOTE = Pattern.compile("(\\^\\^?|__?|=)?([A-Ga-g])([,']{0,20}+)");
    private static final Pattern LENGTH = Pattern.compile("(\\d{0,4})(/{0,8}+)(\\d{0,3})");
    private static final Pattern TUPLET = Pattern.compile("\\((\\d)(?::(\\d{0,2})(?::(\\d{0,2}))?)?");
    private static final Pattern ENDING = Pattern.compile("\\[?(\\d{1,2}(?:[,-]\\d{1,2}){0,8})");
    private static final Pattern FIELD = Pattern.compile("\\[([A-Za-z]):([^\\]]*)\\]");
    private static final Pattern REST = Pattern.compile("[zx]");
    private static final Pattern BARS_REST = Pattern.compile("[ZX](\\d{0,3})");
    private static final Pattern SILENCE = Pattern.compile("N\\.?\\s?C\\.?");
    /** Section 12.2: an exclamation mark by itself is the end of a line in old files. */
    private static final Pattern DECORATION = Pattern.compile("([!+])[^\\s|!+:\\[\\]]{1,40}\\1");

    private static final Pattern JUMP =
            Pattern.compile("(?i)!(?:D\\.?C\\.?|D\\.?S\\.?|dacapo|dacoda|segno|coda|fine).*");

    private static final String PASSED_OVER = " \t.~HLMOPSTuvhijklmnopqstwHIJKNQRVWY`)*y$\\?;#@";
    private static final int MOST_BARS_REST = 200;

    private final AbcState state;
    private final String text;
    private final BiConsumer<Character, String> fields;
    private int place;

    /** @param fields takes what stands in brackets, such as {@code [K:G]} */
    AbcLine(String text, AbcState state, BiConsumer<Character, String> fields) {
        this.text = text;
        this.state = state;
        this.fields = fields;
    }

    void read() {
        while (place < text.length() && !state.isFull()) {
            char c = text.charAt(place);
            if (isBarLine(c)) {
                barLine();
            } else if (c == '"' || c == '!' || c == '+' || c == '{') {
                quoted(c);
            } else if (c == '[') {
                bracket();
            } else if (c == '>' || c == '<') {
                broken(c);
            } else if (c == '(') {
                tuplet();
            } else if (c == '-') {
                state.tie();
                place++;
            } else if (c == '&') {
                overlay();
            } else if (!note() && !rest()) {
                other(c);
            }
        }
    }

    private boolean isBarLine(char c) {
        char next = place + 1 < text.length() ? text.charAt(place + 1) : 0;
        return c == '|' || c == ':' && (next == '|' || next == ':') || (c == '[' || c == '.') && next == '|';
    }

    /** Section 4.8: any run of these signs, but no bracket that belongs to what follows. */
    private void barLine() {
        int start = place;
        for (boolean more = true; more && place < text.length(); ) {
            char c = text.charAt(place);
            char next = place + 1 < text.length() ? text.charAt(place + 1) : 0;
            boolean closes = c == ']' && place > start && text.charAt(place - 1) == '|';
            more = c == '|' || c == ':' || closes || (c == '[' || c == '.') && next == '|';
            place += more ? 1 : 0;
        }
        sign(text.substring(start, place));
        Matcher ending = ENDING.matcher(text).region(place, text.length());
        if (ending.lookingAt()) {
            ending(ending);
        }
    }

    private void sign(String sign) {
        state.closeBar();
        boolean isBoth = sign.matches(":+") || sign.isEmpty();
        int first = sign.indexOf('|');
        int closing = isBoth
                ? 1
                : (int) sign.substring(0, first).chars().filter(c -> c == ':').count();
        boolean opens = isBoth || sign.substring(first).indexOf(':') >= 0;
        state.before().ifPresent(bar -> {
            bar.times = closing > 0 ? closing + 1 : bar.times;
            boolean isDouble = sign.contains("||") || sign.contains("|]") || sign.contains("[|");
            bar.endsPart |= isDouble && !sign.equals("[|]") && !opens;
        });
        state.bar.opens |= opens;
    }

    private void ending(Matcher ending) {
        state.bar.ending = ending.group(1);
        place = ending.end();
    }

    /** Chords and annotations in quotes, decorations, grace notes. */
    private void quoted(char open) {
        if (open == '!' || open == '+') {
            decoration();
            return;
        }
        int end = text.indexOf(open == '{' ? '}' : open, place + 1);
        if (end > 0 && open == '"') {
            symbol(text.substring(place + 1, end));
        }
        place = Math.max(place, end) + 1;
    }

    private void decoration() {
        Matcher decoration = DECORATION.matcher(text).region(place, text.length());
        boolean found = decoration.lookingAt();
        if (found && JUMP.matcher(decoration.group()).matches()) {
            state.fault(
                    place,
                    Phrase.of("\"{0}\" is left out: jumps are not played", Phrase.quoted(decoration.group())),
                    Phrase.of("name the parts and write their order, such as {0}", Phrase.typed("P:ABA")));
        }
        place = found ? decoration.end() : place + 1;
    }

    private void symbol(String quoted) {
        if (quoted.isBlank() || "^_<>@".indexOf(quoted.charAt(0)) >= 0) {
            return;
        }
        Optional<Chord> chord = AbcSymbol.chord(quoted);
        if (SILENCE.matcher(quoted.strip()).matches()) {
            state.bar.symbols.add(new BarDraft.Symbol("r", state.bar.beats()));
        } else if (chord.isEmpty()) {
            state.fault(
                    place,
                    Phrase.of("\"{0}\" is no chord and is left out", Phrase.quoted(quoted)),
                    Phrase.of("write a chord such as {0}", Chord.parse("Am7")));
        } else {
            state.bar.symbols.add(new BarDraft.Symbol(chord.get().toString(), state.bar.beats()));
        }
    }

    private void bracket() {
        Matcher field = FIELD.matcher(text).region(place, text.length());
        Matcher ending = ENDING.matcher(text).region(place, text.length());
        if (field.lookingAt()) {
            fields.accept(field.group(1).charAt(0), field.group(2));
            place = field.end();
        } else if (ending.lookingAt()) {
            state.closeBar();
            ending(ending);
        } else {
            stack();
        }
    }

    /** Section 4.17: the highest note is the tune, the first note's length rules. */
    private void stack() {
        int start = place++;
        Pitch top = null;
        Beats first = null;
        boolean ties = false;
        while (place < text.length() && text.charAt(place) != ']') {
            Matcher note = NOTE.matcher(text).region(place, text.length());
            if (note.lookingAt()) {
                Pitch pitch = pitch(note);
                Beats length = length();
                first = first == null ? length : first;
                top = top == null || pitch.compareTo(top) > 0 ? pitch : top;
            } else {
                ties |= text.charAt(place) == '-';
                place++;
            }
        }
        place = Math.min(text.length(), place + 1);
        if (top != null) {
            state.sound(Optional.of(top), AbcState.times(first, length()), start);
            if (ties) {
                state.tie();
            }
        }
    }

    private boolean note() {
        Matcher note = NOTE.matcher(text).region(place, text.length());
        if (!note.lookingAt()) {
            return false;
        }
        int start = place;
        Pitch pitch = pitch(note);
        state.sound(Optional.of(pitch), length(), start);
        return true;
    }

    private Pitch pitch(Matcher note) {
        int octaves = note.group(3).chars().map(c -> c == ',' ? -1 : 1).sum();
        String sign = note.group(1) == null ? "" : note.group(1);
        Pitch pitch = state.pitch(note.group(2).charAt(0), sign, octaves, place);
        place = note.end();
        return pitch;
    }

    /** Section 4.3: {@code 2 3/2 / // /4}, in units; 1 where nothing is written. */
    private Beats length() {
        Matcher length = LENGTH.matcher(text).region(place, text.length());
        if (!length.lookingAt()) {
            return Beats.ONE;
        }
        boolean isBare = length.group(2).isEmpty();
        place = isBare ? length.end(1) : length.end();
        long over = length.group(1).isEmpty() ? 1 : Long.parseLong(length.group(1));
        long under = isBare
                ? 1
                : length.group(3).isEmpty() ? 1L << length.group(2).length() : Long.parseLong(length.group(3));
        return Beats.of(over, Math.max(1, under));
    }

    private boolean rest() {
        Matcher rest = REST.matcher(text).region(place, text.length());
        Matcher bars = BARS_REST.matcher(text).region(place, text.length());
        int start = place;
        if (rest.lookingAt()) {
            place = rest.end();
            state.sound(Optional.empty(), length(), start);
            return true;
        } else if (!bars.lookingAt()) {
            return false;
        }
        place = bars.end();
        int count = bars.group(1).isEmpty() ? 1 : Integer.parseInt(bars.group(1));
        Beats full = state.metre.isFree() ? Beats.of(4) : state.metre.bar();
        Beats units = AbcState.times(full, Beats.of(state.unit.denominator(), state.unit.numerator()));
        for (int i = 0; i < Math.min(count, MOST_BARS_REST); i++) {
            state.sound(Optional.empty(), units, start);
            if (i + 1 < count) {
                state.closeBar();
            }
        }
        return true;
    }

    private void broken(char sign) {
        int start = place;
        while (place < text.length() && text.charAt(place) == sign) {
            place++;
        }
        state.broken(place - start, sign == '>');
    }

    private void tuplet() {
        Matcher tuplet = TUPLET.matcher(text).region(place, text.length());
        if (tuplet.lookingAt()) {
            state.tuplet(number(tuplet.group(1)), number(tuplet.group(2)), number(tuplet.group(3)));
            place = tuplet.end();
        } else {
            place++;
        }
    }

    private static int number(String digits) {
        return digits == null || digits.isEmpty() ? 0 : Integer.parseInt(digits);
    }

    /** A second part within a bar. */
    private void overlay() {
        state.fault(place, Phrase.of("a second part in one bar is left out"), Phrase.of("write one part a tune"));
        while (place < text.length() && text.charAt(place) != '|') {
            place++;
        }
    }

    private void other(char c) {
        if (PASSED_OVER.indexOf(c) < 0) {
            state.fault(
                    place,
                    Phrase.of("\"{0}\" is not read and is left out", Phrase.typed(String.valueOf(c))),
                    Phrase.of("write notes, rests, chords in quotes and bar lines"));
        }
        place++;
    }
}
