package monochord.theory.note;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * By what names notes go in a country.
 *
 * <p>The engine speaks English throughout; these are for what a learner sees and types. {@link #find} reads all that {@link
 * #write} writes, small letters too, and the English spellings beside it that mean nothing else there.
 *
 * <p>Source: the German names, endings and exceptions, "Doppelversetzungszeichen" (Lehrklänge, lehrklaenge.de) and German Wikipedia, "Doppel-b" (2023): {@code -isis}, {@code -eses}, but {@code Eses},
 * {@code Ases}, {@code Heses} and never {@code Bes}. The syllables of the Latin countries: common practice, no source.
 */
public enum NoteNaming {
    /** {@code A B C}, B flat below B. */
    ENGLISH {
        @Override
        String write(NoteName name, Signs signs) {
            return name.letter() + signs.accidental(name.alteration());
        }

        @Override
        List<FoundName> starting(String text, int from) {
            int letter = "CDEFGAB".indexOf(Character.toUpperCase(text.charAt(from)));
            return letter < 0 ? List.of() : signed("CDEFGAB".charAt(letter), text, from + 1, true);
        }
    },
    /** {@code A H C}, B below H; {@code Fis} above F, {@code Es} below E. */
    GERMAN {
        @Override
        String write(NoteName name, Signs signs) {
            return GermanNames.write(name);
        }

        @Override
        List<FoundName> starting(String text, int from) {
            return GermanNames.starting(text, from);
        }
    },
    /** {@code La Si Do}; accidentals as in English. */
    LATIN {
        @Override
        String write(NoteName name, Signs signs) {
            return SYLLABLES.get(name.letterStep()) + signs.accidental(name.alteration());
        }

        @Override
        List<FoundName> starting(String text, int from) {
            String lower = text.substring(from, Math.min(text.length(), from + LONGEST))
                    .toLowerCase(Locale.ROOT);
            String plain = withoutAccents(lower);
            for (int step = 0; step < SYLLABLES.size(); step++) {
                String syllable = SYLLABLES.get(step).toLowerCase(Locale.ROOT);
                if (plain.startsWith(syllable)) {
                    List<FoundName> found = signed("CDEFGAB".charAt(step), text, from + syllable.length(), true);
                    found.addAll(ENGLISH.starting(text, from));
                    return found;
                }
            }
            return ENGLISH.starting(text, from);
        }
    };

    private static final List<String> SYLLABLES = List.of("Do", "Re", "Mi", "Fa", "Sol", "La", "Si");
    private static final int LONGEST = 3;
    private static final String ACCENTED = "éèáàóòíìúùâêîôû";
    private static final String UNACCENTED = "eeaaooiiuuaeiou";

    /** A name found in a text, and where it ends. */
    public record FoundName(NoteName name, int end) {}

    abstract String write(NoteName name, Signs signs);

    /** The names that begin there, the longest first; {@code Asus4} begins with {@code As} and with {@code A}. */
    abstract List<FoundName> starting(String text, int from);

    /** The names that begin at this place of a text, the longest first. */
    public List<FoundName> find(String text, int from) {
        return from < text.length() ? starting(text, from) : List.of();
    }

    /** The one of that name: {@code german}. */
    public static Optional<NoteNaming> of(String word) {
        for (NoteNaming naming : values()) {
            if (naming.toString().equalsIgnoreCase(word.strip())) {
                return Optional.of(naming);
            }
        }
        return Optional.empty();
    }

    /** A letter and the accidentals behind it; and, if there are any, the letter with fewer of them. */
    static List<FoundName> signed(char letter, String text, int from, boolean bare) {
        List<FoundName> found = new ArrayList<>();
        int alteration = 0;
        int place = from;
        if (bare) {
            found.add(new FoundName(NoteName.of(letter, 0), from));
        }
        for (int step = step(text, place);
                step != 0 && step * alteration >= 0 && Math.abs(alteration + step) <= Cursor.MOST_ACCIDENTALS;
                step = step(text, place)) {
            alteration += step;
            place += Character.charCount(text.codePointAt(place));
            found.add(0, new FoundName(NoteName.of(letter, alteration), place));
        }
        return found;
    }

    private static int step(String text, int place) {
        return place >= text.length()
                ? 0
                : switch (text.codePointAt(place)) {
                    case 'b', '♭' -> -1;
                    case '#', '♯' -> 1;
                    case 'x', 0x1D12A -> 2;
                    case 0x1D12B -> -2;
                    default -> 0;
                };
    }

    private static String withoutAccents(String text) {
        StringBuilder plain = new StringBuilder(text);
        for (int i = 0; i < plain.length(); i++) {
            int accented = ACCENTED.indexOf(plain.charAt(i));
            if (accented >= 0) {
                plain.setCharAt(i, UNACCENTED.charAt(accented));
            }
        }
        return plain.toString();
    }

    /** In small letters: {@code german}. */
    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT);
    }
}
