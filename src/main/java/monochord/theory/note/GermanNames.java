package monochord.theory.note;

import java.util.ArrayList;
import java.util.List;
import monochord.theory.note.NoteNaming.FoundName;

/** German note names: a letter, {@code is} for each sharp, {@code es} for each flat; see {@link NoteNaming}. */
final class GermanNames {
    private static final String SHARP = "is";
    private static final String FLAT = "es";

    private GermanNames() {}

    static String write(NoteName name) {
        String letter = name.letter() == 'B' ? "H" : Character.toString(name.letter());
        int size = Math.abs(name.alteration());
        if (name.alteration() >= 0) {
            return letter + SHARP.repeat(size);
        }
        return switch (letter) {
            case "A", "E" -> letter + "s" + FLAT.repeat(size - 1);
            case "H" -> size == 1 ? "B" : letter + FLAT.repeat(size);
            default -> letter + FLAT.repeat(size);
        };
    }

    /** The longest first. B with an accidental behind it is English, for a German B takes none. */
    static List<FoundName> starting(String text, int from) {
        char letter = Character.toUpperCase(text.charAt(from));
        if (letter == 'B') {
            List<FoundName> english = NoteNaming.signed('B', text, from + 1, false);
            return english.isEmpty() ? List.of(new FoundName(NoteName.of('B', -1), from + 1)) : english;
        }
        if ("CDEFGAH".indexOf(letter) < 0) {
            return List.of();
        }
        char english = letter == 'H' ? 'B' : letter;
        List<FoundName> found = new ArrayList<>(NoteNaming.signed(english, text, from + 1, true));
        addAll(found, english, new NameEnding(SHARP, 1, 0), text, from + 1);
        boolean vowel = letter == 'A' || letter == 'E';
        if (vowel && startsWith(text, from + 1, "s")) {
            found.add(0, new FoundName(NoteName.of(english, -1), from + 2));
            addAll(found, english, new NameEnding(FLAT, -1, -1), text, from + 2);
            addAll(found, english, new NameEnding("as", -1, -1), text, from + 2);
        } else if (!vowel) {
            addAll(found, english, new NameEnding(FLAT, -1, 0), text, from + 1);
        }
        return found;
    }

    /** An ending that is said once for each sharp or flat, behind so many that are said already. */
    private record NameEnding(String text, int step, int before) {}

    private static void addAll(List<FoundName> found, char letter, NameEnding ending, String text, int from) {
        int alteration = ending.before;
        int length = ending.text.length();
        for (int place = from;
                startsWith(text, place, ending.text) && Math.abs(alteration) < Cursor.MOST_ACCIDENTALS;
                place += length) {
            alteration += ending.step;
            found.add(0, new FoundName(NoteName.of(letter, alteration), place + length));
        }
    }

    private static boolean startsWith(String text, int place, String ending) {
        return text.regionMatches(true, place, ending, 0, ending.length());
    }
}
