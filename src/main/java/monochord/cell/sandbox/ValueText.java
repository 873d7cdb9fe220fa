package monochord.cell.sandbox;

import java.lang.reflect.Array;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.BaseStream;
import java.util.stream.Collectors;
import monochord.cell.protocol.EncodedValue;
import monochord.cell.protocol.EncodedValue.Shape;
import monochord.harmony.Borrowing;
import monochord.harmony.Borrowing.Borrowed;
import monochord.harmony.Music;
import monochord.harmony.Progression;
import monochord.harmony.voicing.VoicedProgression;
import monochord.harmony.voicing.Voicing;
import monochord.harmony.voicing.VoicingTask;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.Mode;
import monochord.theory.Numeral;
import monochord.theory.Scale;
import monochord.theory.note.NoteName;
import monochord.theory.note.Pitch;
import monochord.theory.note.Signs;
import monochord.theory.note.Unreadable;

/** Puts the values of a cell into words that the line can read, music as music. */
final class ValueText {
    /** What stands before a name that a cell has made. */
    static final String MADE_HERE = "REPL\\.\\$JShell\\$\\w+[$.]";

    private static final List<Mode> LIKELY_FIRST =
            List.of(Mode.IONIAN, Mode.AEOLIAN, Mode.MIXOLYDIAN, Mode.DORIAN, Mode.LYDIAN, Mode.PHRYGIAN, Mode.LOCRIAN);

    private ValueText() {}

    static EncodedValue of(Object value) {
        return music(value).orElseGet(() -> EncodedValue.of(Shape.PLAIN, Limits.cut(plain(value))));
    }

    /** How a value would be typed behind a verb, or nothing where it is neither music, text nor a number. */
    static String asTyped(Object value) {
        if (value instanceof String || value instanceof Number || value instanceof Pitch || value instanceof NoteName) {
            return Limits.cut(value.toString());
        }
        return value instanceof Numeral
                ? value.toString()
                : music(value).map(told -> told.part(0)).orElse("");
    }

    static Optional<EncodedValue> music(Object value) {
        if (value instanceof Chord chord) {
            return Optional.of(EncodedValue.of(Shape.CHORD, chord.toString()));
        } else if (value instanceof Scale scale) {
            return Optional.of(EncodedValue.of(Shape.SCALE, scale.toString()));
        } else if (value instanceof Key key) {
            return Optional.of(EncodedValue.of(Shape.KEY, key.toString()));
        } else if (value instanceof Progression progression) {
            return Optional.of(progression(progression));
        } else if (value instanceof VoicedProgression way) {
            return Optional.of(way(way));
        } else if (value instanceof Voicing voicing) {
            return Optional.of(notes(voicing.pitches()));
        } else if (value instanceof Music music) {
            return music(music);
        }
        return value instanceof Collection<?> many ? several(many) : Optional.empty();
    }

    private static Optional<EncodedValue> music(Music music) {
        if (music instanceof Music.OneChord one) {
            return music(one.chord());
        } else if (music instanceof Music.OneScale one) {
            return music(one.scale());
        } else if (music instanceof Music.OneProgression one) {
            return music(one.progression());
        }
        Music.Notes notes = (Music.Notes) music;
        return several(notes.pitches().isEmpty() ? notes.names() : notes.pitches());
    }

    private static EncodedValue progression(Progression progression) {
        String symbols = progression.toString();
        String numerals = progression.numerals(Signs.ASCII);
        String better = readsBack(symbols, progression) || !readsBack(numerals, progression) ? symbols : numerals;
        return EncodedValue.of(Shape.PROGRESSION, symbols, progression.key().toString(), better);
    }

    private static boolean readsBack(String text, Progression progression) {
        try {
            return Progression.parse(text, progression.key()).equals(progression);
        } catch (Unreadable unreadable) {
            return false;
        }
    }

    private static EncodedValue way(VoicedProgression way) {
        VoicingTask task = way.task();
        String tops = task.tops().stream()
                .map(top -> top.map(Pitch::toString).orElse("-"))
                .collect(Collectors.joining(" "));
        return EncodedValue.of(
                Shape.VOICED,
                joined(task.chords(), " "),
                task.key().toString(),
                task.style().toString(),
                Integer.toString(task.reach().steps()),
                tops,
                task.voices().isPresent() ? Integer.toString(task.voices().getAsInt()) : "");
    }

    private static EncodedValue notes(Collection<?> notes) {
        return EncodedValue.of(Shape.NOTES, joined(notes, ", "));
    }

    private static String joined(Collection<?> values, String between) {
        return values.stream().map(Object::toString).collect(Collectors.joining(between));
    }

    /** Two or more of one kind. */
    private static Optional<EncodedValue> several(Collection<?> many) {
        List<?> values = many.size() > Limits.ELEMENTS ? List.of() : new ArrayList<>(many);
        if (values.size() > 1 && (all(values, NoteName.class) || all(values, Pitch.class))) {
            return Optional.of(notes(values));
        } else if (values.size() > 1 && all(values, Chord.class)) {
            return Optional.of(EncodedValue.of(Shape.CHORDS, joined(values, " ")));
        }
        return values.isEmpty() || !all(values, Borrowed.class) ? Optional.empty() : borrowed(values);
    }

    private static boolean all(List<?> values, Class<?> kind) {
        return values.stream().allMatch(kind::isInstance);
    }

    /** Borrowed chords know the scales they come from, and so the tonic, but not the mode that borrows them. */
    private static Optional<EncodedValue> borrowed(List<?> values) {
        Borrowed first = (Borrowed) values.get(0);
        if (first.sources().isEmpty()) {
            return Optional.empty();
        }
        NoteName tonic = first.sources().get(0).tonic();
        List<Chord> chords =
                values.stream().map(value -> ((Borrowed) value).chord()).toList();
        for (Mode mode : LIKELY_FIRST) {
            Key key = new Key(tonic, mode);
            if (Borrowing.table(key).containsAll(values)) {
                return Optional.of(EncodedValue.of(Shape.BORROWED, joined(chords, " "), key.toString()));
            }
        }
        return Optional.empty();
    }

    static String plain(Object value) {
        if (value instanceof String text) {
            return "\"" + text + "\"";
        } else if (value instanceof BaseStream<?, ?>) {
            return "a stream, seen only once it is gathered: add .toList()";
        } else if (value != null && value.getClass().isArray()) {
            return array(value);
        }
        return value == null ? "null" : said(value);
    }

    private static String array(Object array) {
        List<String> shown = new ArrayList<>();
        for (int i = 0; i < Array.getLength(array) && i < Limits.ELEMENTS; i++) {
            Object element = Array.get(array, i);
            shown.add(element != null && element.getClass().isArray() ? "[…]" : plain(element));
        }
        String more = Array.getLength(array) > Limits.ELEMENTS ? ", …" : "";
        return "[" + String.join(", ", shown) + more + "]";
    }

    private static String said(Object value) {
        try {
            String said = value.toString();
            return said == null ? "null" : withoutAddress(said, value).replaceAll(MADE_HERE, "");
        } catch (RuntimeException | StackOverflowError mute) {
            return Rejected.withArticle(nameOf(value)) + " whose toString() fails: " + mute;
        }
    }

    /** What most objects say of themselves is no news, and differs from run to run. */
    private static String withoutAddress(String said, Object value) {
        return said.equals(value.getClass().getName() + "@" + Integer.toHexString(value.hashCode()))
                ? Rejected.withArticle(nameOf(value))
                : said;
    }

    private static String nameOf(Object value) {
        Class<?> kind = value.getClass();
        return kind.isHidden() || kind.isSynthetic() ? "function" : kind.getSimpleName();
    }
}
