package monochord.view.keyboard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import monochord.Thorough;
import monochord.text.Reader;
import monochord.text.StyledText;
import monochord.theory.Chord;
import monochord.theory.Scale;
import monochord.theory.note.NoteNaming;
import monochord.theory.note.Signs;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds for every picture: all 35 note names, every width that somebody may have, both kinds of signs. The keys are counted here anew. */
class KeyboardPictureLawsTest {
    private static final List<String> KINDS = List.of("", "m7b5", "maj7", "sus4", "7b9", "13");

    @ParameterizedTest
    @MethodSource("monochord.theory.note.Signs#values")
    void everyPictureFitsItsWidthAndEndsInNoSpaces(Signs signs) {
        int step = signs.naming() == NoteNaming.ENGLISH ? Thorough.times(11, 1) : Thorough.times(27, 9);
        for (int width = 20; width <= 100; width += step) {
            for (StyledText picture : pictures(signs, width)) {
                assertTrue(picture.columns() <= Math.min(80, width), picture.plain());
                for (String line : picture.plain().split("\n")) {
                    assertFalse(line.isEmpty() || line.endsWith(" "), picture.plain());
                    assertTrue(!signs.isAscii() || line.chars().allMatch(c -> c >= ' ' && c < 127), line);
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("monochord.theory.note.Signs#values")
    void everyToneStandsOnItsKeyOnce(Signs signs) {
        int drawn = 0;
        for (int width = 30; width <= 80; width += Thorough.times(10, 5)) {
            for (String chord : chords()) {
                StyledText picture = KeyboardPicture.chord(Chord.parse(chord), Reader.of(signs), width);
                List<String> names = Chord.parse(chord).tones().stream()
                        .map(name -> name.write(signs))
                        .toList();
                drawn += isDrawn(picture) ? 1 : 0;
                if (isDrawn(picture)) {
                    assertKeys(new Drawn(picture.plain()), names, signs.naming());
                }
                assertTrue(isDrawn(picture) || width < 80, chord + " can be drawn in 80 columns");
            }
        }
        assertTrue(drawn > 1000, "only " + drawn + " pictures were drawn");
    }

    private static void assertKeys(Drawn drawn, List<String> names, NoteNaming naming) {
        List<String> shown = new ArrayList<>();
        for (int key = 0; key < drawn.signs.size(); key++) {
            String sign = drawn.signs.get(key);
            if (Character.isLetter(sign.codePointAt(0))) {
                int fromRoot = Math.floorMod(key - drawn.keyOf(names.get(0)), 12);
                assertEquals(Math.floorMod(key(sign, naming) - key(names.get(0), naming), 12), fromRoot, drawn.text);
                shown.add(sign);
            }
        }
        assertEquals(names.stream().sorted().toList(), shown.stream().sorted().toList(), drawn.text);
        assertEquals(names.size(), drawn.rolesBesideNames, drawn.text);
    }

    /** Half steps above C, from 0 to 11. */
    private static int key(String name, NoteNaming naming) {
        return naming.find(name, 0).get(0).name().pitchClass();
    }

    private static boolean isDrawn(StyledText picture) {
        return picture.plain().contains("──") || picture.plain().contains("--");
    }

    private static Stream<String> roots() {
        return "CDEFGAB"
                .chars()
                .boxed()
                .flatMap(letter -> Stream.of("bb", "b", "", "#", "##").map(sign -> Character.toString(letter) + sign));
    }

    private static List<String> chords() {
        return roots().flatMap(root -> KINDS.stream().map(kind -> root + kind)).toList();
    }

    private static List<StyledText> pictures(Signs signs, int width) {
        List<StyledText> pictures = new ArrayList<>();
        roots().map(root -> root + "13")
                .forEach(chord -> pictures.add(KeyboardPicture.chord(Chord.parse(chord), Reader.of(signs), width)));
        roots().forEach(root ->
                pictures.add(KeyboardPicture.scale(Scale.parse(root + " harmonic minor"), Reader.of(signs), width)));
        roots().forEach(root -> {
            Chord over = Chord.parse("Ebm7b5/" + root);
            pictures.add(KeyboardPicture.chord(over, Reader.of(signs), width));
            pictures.add(KeyboardPicture.hands(
                    ToneRoles.close(Chord.parse("F")).subList(0, 1),
                    ToneRoles.close(over).subList(1, 3),
                    Reader.of(signs),
                    width));
        });
        return pictures;
    }

    /** A picture read back: the signs of its keys from low to high, black ones found between the white ones. */
    private static final class Drawn {
        final String text;
        final List<String> signs = new ArrayList<>();
        int rolesBesideNames;

        Drawn(String text) {
            this.text = text;
            List<String> lines = Arrays.asList(text.split("\n"));
            int string = IntStream.range(0, lines.size())
                    .filter(i -> lines.get(i).contains("──") || lines.get(i).contains("--"))
                    .findFirst()
                    .orElseThrow();
            List<Sign> white = signs(lines.get(string));
            List<Sign> black = string == 0 ? List.of() : signs(lines.get(string - 1));
            int next = 0;
            for (Sign sign : white) {
                while (next < black.size() && black.get(next).middle() < sign.middle()) {
                    signs.add(black.get(next++).text());
                }
                signs.add(sign.text());
            }
            assertEquals(black.size(), next, text);
            rolesBesideNames = beside(white, lines, string + 1) + beside(black, lines, string - 2);
        }

        private static int beside(List<Sign> keys, List<String> lines, int row) {
            List<Sign> roles = row < 0 || row >= lines.size() ? List.of() : signs(lines.get(row));
            return (int) keys.stream()
                    .filter(key -> Character.isLetter(key.text().codePointAt(0)))
                    .filter(key -> roles.stream().filter(key::meets).count() == 1)
                    .count();
        }

        int keyOf(String name) {
            return signs.indexOf(name);
        }

        private static List<Sign> signs(String line) {
            List<Sign> signs = new ArrayList<>();
            int[] columns = line.codePoints().toArray();
            int start = 0;
            for (int i = 0; i <= columns.length; i++) {
                if (i == columns.length || columns[i] == ' ' || columns[i] == '-' || columns[i] == '─') {
                    if (i > start) {
                        signs.add(new Sign(start, new String(columns, start, i - start)));
                    }
                    start = i + 1;
                }
            }
            return signs;
        }
    }

    private record Sign(int start, String text) {
        int middle() {
            return start + text.codePointCount(0, text.length()) / 2;
        }

        boolean meets(Sign role) {
            return role.start <= end() && start <= role.end();
        }

        int end() {
            return start + text.codePointCount(0, text.length()) - 1;
        }
    }
}
