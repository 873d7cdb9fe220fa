package monochord.theory;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.util.List;
import java.util.Random;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.IntFunction;
import monochord.Growth;
import monochord.Thorough;
import monochord.theory.note.Unreadable;

/**
 * Drives one parser with texts nobody would write. Whatever comes, it answers or refuses with a place inside the text;
 * and what it answers can be written and read again.
 *
 * @param parse the parser
 * @param pieces the characters and short pieces its texts are made of
 * @param texts texts it reads, to be damaged
 * @param use what a person would do next with the value; it must not throw
 */
public record Driver<T>(Function<String, T> parse, List<String> pieces, List<String> texts, Consumer<T> use) {
    private static final int LONG_LINE = Thorough.times(1 << 17, 1 << 20);

    /** Every text of up to that many pieces; answers how many there were. */
    public int driveAllUpTo(int length) {
        return driveAll("", length);
    }

    private int driveAll(String start, int left) {
        drive(start);
        int driven = 1;
        for (String piece : left == 0 ? List.<String>of() : pieces) {
            driven += driveAll(start + piece, left - 1);
        }
        return driven;
    }

    /** Half of them pieces in a row, half of them readable texts with a piece put in, taken out or doubled. */
    public void driveAtRandom(int times, long seed) {
        Random chance = new Random(seed);
        for (int i = 0; i < times; i++) {
            drive(i % 2 == 0 ? inARow(chance) : damaged(chance));
        }
    }

    private String inARow(Random chance) {
        StringBuilder text = new StringBuilder();
        for (int length = 5 + chance.nextInt(25); length > 0; length--) {
            text.append(pick(pieces, chance));
        }
        return text.toString();
    }

    private String damaged(Random chance) {
        StringBuilder text = new StringBuilder(pick(texts, chance));
        for (int times = 1 + chance.nextInt(4); times > 0; times--) {
            int place = chance.nextInt(text.length() + 1);
            switch (chance.nextInt(4)) {
                case 0 -> text.insert(place, pick(pieces, chance));
                case 1 -> text.delete(place, Math.min(place + 1, text.length()));
                case 2 -> text.insert(place, text.substring(place));
                default -> text.insert(place, Character.toString(chance.nextInt(0x20000)));
            }
        }
        return text.toString();
    }

    private static String pick(List<String> from, Random chance) {
        return from.get(chance.nextInt(from.size()));
    }

    /** One line of up to a megabyte for each piece, alone and after a readable text; none takes more than is due. */
    public void driveWithLongLines() {
        for (String piece : pieces) {
            IntFunction<String> line = length -> piece.repeat(length / piece.length());
            Growth.assertLinear(piece, LONG_LINE, line, this::drive);
            Growth.assertLinear("then " + piece, LONG_LINE, length -> texts.get(0) + line.apply(length), this::drive);
        }
    }

    private void drive(String text) {
        T value;
        try {
            value = parse.apply(text);
        } catch (Unreadable unreadable) {
            assertPlaced(unreadable, text);
            return;
        } catch (RuntimeException | StackOverflowError other) {
            fail("\"" + text + "\" threw " + other, other);
            return;
        }
        assertRoundTrip(value, text);
    }

    private void assertPlaced(Unreadable unreadable, String text) {
        boolean inside = unreadable.place() >= 0 && unreadable.place() <= text.length();
        if (!inside
                || !unreadable.text().equals(text)
                || unreadable.getMessage().length() > 400) {
            fail("\"" + text + "\" is refused at " + unreadable.place() + ": " + unreadable.getMessage());
        }
        assertTrue(unreadable.getMessage().chars().noneMatch(Character::isISOControl), unreadable::getMessage);
    }

    private void assertRoundTrip(T value, String text) {
        try {
            assertEquals(value, parse.apply(value.toString()), () -> "from \"" + text + "\"");
            use.accept(value);
        } catch (RuntimeException broken) {
            fail("\"" + text + "\" is read as " + value + ", then " + broken, broken);
        }
    }
}
