package monochord.paper;

import java.util.ArrayList;
import java.util.List;
import monochord.harmony.Music;
import monochord.harmony.MusicText;
import monochord.lesson.Filling;
import monochord.lesson.Lesson;
import monochord.lesson.LessonPart;
import monochord.lesson.ProseBlock;
import monochord.lesson.TuneExcerpt;
import monochord.practice.Question;
import monochord.text.Phrase;
import monochord.theory.Key;
import monochord.view.keyboard.Drawing;
import monochord.view.music.MusicAnswer;
import monochord.view.staff.MusicOnStaff;

/**
 * A lesson to take home: its prose, what it shows on keyboards and staves, its questions with a line to write on. What is only
 * heard is left out, and so are questions by ear and Java.
 */
public final class LessonHandout {
    private static final long SEED = 1;
    /** More chords than these are shown on the staff alone. */
    private static final int MOST_KEYBOARDS = 4;

    private final Key key;
    private final Filling filling;
    private final List<Handout.HandoutSection> sections = new ArrayList<>();
    private Phrase heading = Phrase.NOTHING;
    private List<Handout.Block> blocks = new ArrayList<>();
    private int questions;

    private LessonHandout(Key key) {
        this.key = key;
        this.filling = new Filling(key);
    }

    /** @param key in which it is read; the same key gives the same questions */
    public static Handout of(Lesson lesson, Key key) {
        LessonHandout handout = new LessonHandout(key);
        lesson.parts().forEach(handout::add);
        handout.section(Phrase.NOTHING);
        return new Handout(
                Phrase.typed(lesson.title()),
                List.of(),
                handout.sections,
                lesson.number().isEmpty()
                        ? Phrase.NOTHING
                        : Phrase.of("Lesson {0}, in {1}", Phrase.typed(lesson.number()), key));
    }

    private void add(LessonPart part) {
        if (part instanceof LessonPart.ProsePart prose) {
            prose.blocks().forEach(this::add);
        } else if (part instanceof LessonPart.Show show) {
            show(MusicText.read(show.sentence(), key));
        } else if (part instanceof LessonPart.TunePart tune) {
            add(tune.tune().in(key));
        } else if (part instanceof LessonPart.Ask ask) {
            ask.questions(key, SEED).stream()
                    .filter(question -> !question.isByEar())
                    .forEach(this::add);
        }
    }

    private void add(ProseBlock block) {
        List<Phrase> runs = new ArrayList<>();
        block.spans().forEach(run -> runs.add(filling.of(run.text())));
        Phrase words = Phrase.joined("", runs);
        if (block instanceof ProseBlock.Heading) {
            section(words);
        } else {
            Phrase line = block instanceof ProseBlock.ListItem item
                    ? Phrase.of("{0} {1}", Phrase.typed(item.number() == 0 ? "•" : item.number() + "."), words)
                    : words;
            blocks.add(new Handout.Block(Phrase.NOTHING, List.of(line), List.of()));
        }
    }

    private void section(Phrase next) {
        if (!blocks.isEmpty()) {
            sections.add(new Handout.HandoutSection(heading, 1, blocks));
        }
        heading = next;
        blocks = new ArrayList<>();
    }

    private void show(Music music) {
        List<Handout.HandoutFigure> figures = new ArrayList<>();
        List<Drawing> drawings = MusicAnswer.of(music, key).drawings();
        if (drawings.size() <= MOST_KEYBOARDS) {
            drawings.forEach(drawing -> figures.add(Handout.HandoutFigure.KeyboardFigure.of(drawing)));
        }
        figures.add(new Handout.HandoutFigure.Staff(MusicOnStaff.of(music, key)));
        blocks.add(new Handout.Block(Phrase.NOTHING, List.of(), figures));
    }

    /** In letters: its notes with their beats, its chords, its words. */
    private void add(TuneExcerpt tune) {
        List<Phrase> lines = new ArrayList<>();
        lines.add(Phrase.of("{0}: {1}, in {2}", Phrase.typed(tune.title()), tune.place(), tune.key()));
        lines.add(Phrase.of("{0}", tune.melody()));
        lines.add(Phrase.of("Chords: {0}", Phrase.row(tune.chords().symbols())));
        String sung = String.join(" ", tune.words())
                .replace("- ", "")
                .replaceAll("\\s+", " ")
                .strip();
        if (!sung.isEmpty()) {
            lines.add(Phrase.typed(sung));
        }
        blocks.add(new Handout.Block(Phrase.NOTHING, lines, List.of()));
    }

    private void add(Question question) {
        questions++;
        blocks.add(new Handout.Block(
                Phrase.of("{0}. {1}", questions, question.prompt()),
                List.of(),
                List.of(new Handout.HandoutFigure.Room(AnswerRoom.LINE))));
    }
}
