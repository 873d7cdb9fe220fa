package monochord.lesson.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import monochord.harmony.MusicText;
import monochord.lesson.LessonPart;
import monochord.lesson.Trouble;
import monochord.text.Nearest;
import monochord.text.Phrase;
import monochord.theory.Key;
import monochord.theory.ScaleKind;
import monochord.theory.note.NoteName;
import monochord.theory.note.Unreadable;

/** Reads the blocks that hold lines of music. */
final class MusicLines {
    private static final int MOST_COMPARED = 8;
    private static final Key ANY_KEY = Key.major(NoteName.C);
    private static final List<String> SCALES =
            ScaleKind.all().stream().map(ScaleKind::toString).toList();

    private MusicLines() {}

    static Optional<LessonPart> show(int fence, List<SourceLine> lines, Faults faults) {
        return one("show", lines, faults).map(music -> new LessonPart.Show(fence, music));
    }

    static Optional<LessonPart> listen(int fence, List<SourceLine> lines, Faults faults) {
        return one("listen", lines, faults).map(music -> new LessonPart.Listen(fence, music));
    }

    static Optional<LessonPart> compare(int fence, List<SourceLine> lines, Faults faults) {
        if (lines.size() < 2) {
            faults.at(
                    fence,
                    1,
                    Phrase.of("a compare block with one line"),
                    Phrase.of("write a second line to compare it with"));
        }
        List<String> music = readable(atMost(MOST_COMPARED, "compare", lines, faults), faults);
        return music.size() < 2 ? Optional.empty() : Optional.of(new LessonPart.Compare(fence, music));
    }

    private static Optional<String> one(String word, List<SourceLine> lines, Faults faults) {
        return readable(atMost(1, word, lines, faults), faults).stream().findFirst();
    }

    /** The first lines of a block; those past them get one fault together. */
    private static List<SourceLine> atMost(int most, String word, List<SourceLine> lines, Faults faults) {
        if (lines.size() <= most) {
            return lines;
        }
        Phrase what = Phrase.of("line {0} in a {1} block", most + 1, Phrase.typed(word));
        faults.at(lines.get(most).number(), 1, what, Phrase.of("write it in a block of its own"));
        return lines.subList(0, most);
    }

    private static List<String> readable(List<SourceLine> lines, Faults faults) {
        List<String> readable = new ArrayList<>();
        for (SourceLine line : lines) {
            if (isReadable(line, faults)) {
                readable.add(line.text().strip());
            }
        }
        return readable;
    }

    private static boolean isReadable(SourceLine line, Faults faults) {
        try {
            MusicText.read(line.text(), ANY_KEY);
            return true;
        } catch (Unreadable unreadable) {
            faults.in(line, 0, trouble(line, unreadable));
            return false;
        }
    }

    private static Trouble trouble(SourceLine line, Unreadable unreadable) {
        return Nearest.to(line.text().strip(), SCALES)
                .map(scale -> new Trouble(
                        line.whole().place(),
                        Phrase.of("no scale has this name"),
                        Phrase.of("write {0}", Phrase.typed(scale))))
                .orElseGet(() -> Trouble.of(unreadable));
    }
}
