package monochord.shell.verb.paper;

import static monochord.shell.sentence.FormPart.clause;
import static monochord.shell.sentence.FormPart.fixed;
import static monochord.shell.sentence.FormPart.may;
import static monochord.shell.sentence.FormPart.oneOf;
import static monochord.shell.sentence.FormPart.option;
import static monochord.shell.sentence.FormPart.or;
import static monochord.shell.sentence.FormPart.takes;
import static monochord.shell.sentence.FormPart.unsaid;
import static monochord.shell.sentence.FormPart.words;

import java.nio.file.Files;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import monochord.classroom.AssignmentReading;
import monochord.harmony.Progression;
import monochord.harmony.voicing.VoicingSearch;
import monochord.harmony.voicing.VoicingStyle;
import monochord.harmony.voicing.VoicingTask;
import monochord.lesson.Lesson;
import monochord.lesson.read.LibraryEntry;
import monochord.paper.ChordHandout;
import monochord.paper.Handout;
import monochord.paper.HandoutPages;
import monochord.paper.HandoutWeb;
import monochord.paper.LessonHandout;
import monochord.paper.ScaleHandout;
import monochord.paper.VoicingHandout;
import monochord.paper.Worksheet;
import monochord.shell.sentence.NewFile;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.SentenceKey;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Value;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.Sitting;
import monochord.text.Phrase;
import monochord.text.StyledText;
import monochord.theory.Key;
import monochord.theory.note.Clause;
import monochord.theory.note.Unreadable;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;
import monochord.view.course.CheckAnswer;

/** Makes a handout: the chords of a key, scales, hands for a progression, a lesson; or a worksheet with its key. */
final class SheetVerb implements Verb {
    private static final String EXAMPLE = "sheet chords in D --pdf chords.pdf";
    private static final String CHORDS = "chords";
    private static final String SCALES = "scales";
    private static final String VOICINGS = "voicings";
    private static final String QUESTIONS = "questions";

    @Override
    public String word() {
        return "sheet";
    }

    @Override
    public Usage usage() {
        return Usage.of(
                        word(),
                        Usage.VerbTopic.TEACHING,
                        Phrase.of("make a handout, or a worksheet with its key, as PDF, pictures or a page"))
                .form(
                        words(CHORDS, SCALES),
                        or(),
                        fixed(VOICINGS),
                        takes(Value.PROGRESSION),
                        or(),
                        fixed(QUESTIONS),
                        takes(Value.SKILL),
                        or(),
                        takes(Value.LESSON, Value.FILE),
                        may(clause(AssignmentSheet.AS, Value.CODE)),
                        may(clause("in", Value.KEYS)),
                        may(clause(WorksheetSentence.COUNT, Value.NUMBER)),
                        may(clause(WorksheetSentence.COPIES, Value.NUMBER)),
                        may(oneOf(WorksheetSentence.LINES, WorksheetSentence.STAVES, WorksheetSentence.KEYBOARDS)))
                .form(PaperFiles.form())
                .form(unsaid(option("seed", Value.SEED)))
                .examples(
                        EXAMPLE,
                        "sheet scales in Eb --html scales.html",
                        "sheet voicings F C Ab F in C --pdf hands.pdf",
                        WorksheetSentence.EXAMPLE,
                        "sheet 5.2 in A --pdf lesson.pdf",
                        "sheet homework.md --pdf homework.pdf");
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        Optional<String> skill = behind(QUESTIONS, sentence);
        if (!PaperFiles.isWanted(sentence)) {
            throw Unreadable.because(
                    sentence.whole(),
                    sentence.whole().length(),
                    "a handout",
                    "it has to be said where it goes",
                    EXAMPLE);
        }
        if (AssignmentSheet.isNamed(sentence)) {
            return assignment(sentence, sitting);
        }
        return skill.isPresent() ? worksheets(skill.get(), sentence, sitting) : handout(sentence, sitting);
    }

    private static Answer handout(Sentence sentence, Sitting sitting) {
        Handout handout = handoutOf(sentence, sitting);
        PaperFiles files = new PaperFiles(sentence, sitting);
        files.page(() -> HandoutWeb.of(handout, PaperFiles.reader(sitting)))
                .pages(handout.title(), size -> HandoutPages.of(handout, size, PaperFiles.reader(sitting)));
        return written(files, handout.title(), sentence, sitting);
    }

    private static Answer written(PaperFiles files, Phrase title, Sentence sentence, Sitting sitting) {
        return NewFile.write(files.files(), sentence, sitting, new SheetWritten(files.names(), title));
    }

    /** The sheets in one file, their keys in another beside it. */
    private static Answer worksheets(String skill, Sentence sentence, Sitting sitting) {
        WorksheetSentence asked = sentence.body().read(text -> new WorksheetSentence(sentence, skill, sitting));
        PaperFiles files = new PaperFiles(sentence, sitting);
        files.worksheets(asked.title(), asked::sheets);
        return written(files, asked.title(), sentence, sitting);
    }

    /** The worksheet of an assignment and its key, with no name to be written on it but the pupil's code. */
    private static Answer assignment(Sentence sentence, Sitting sitting) {
        AssignmentReading reading = AssignmentSheet.read(sentence, sitting);
        if (reading.assignment().isEmpty() || !reading.faults().isEmpty()) {
            String name = sentence.body().text();
            boolean found = sentence.body()
                    .read(text -> Files.isReadable(sitting.outside().file(text)));
            return new CheckAnswer(List.of(new CheckAnswer.Checked(name, reading.faults(), found)));
        }
        Worksheet sheet = AssignmentSheet.of(reading.assignment().get(), sentence);
        PaperFiles files = new PaperFiles(sentence, sitting);
        files.worksheets(sheet.title(), () -> Stream.of(sheet));
        return written(files, sheet.title(), sentence, sitting);
    }

    /** What follows a word with which the sentence begins. */
    private static Optional<String> behind(String word, Sentence sentence) {
        String body = sentence.body().text();
        boolean begins = body.toLowerCase(Locale.ROOT).startsWith(word + " ");
        return begins ? Optional.of(body.substring(word.length()).strip()) : Optional.empty();
    }

    private static Handout handoutOf(Sentence sentence, Sitting sitting) {
        Key key = SentenceKey.of(sentence, sitting);
        Optional<String> progression = behind(VOICINGS, sentence);
        if (progression.isPresent()) {
            return sentence.body().read(text -> voicings(text, key));
        }
        String body = sentence.body().text().toLowerCase(Locale.ROOT);
        return switch (body) {
            case CHORDS -> ChordHandout.of(key);
            case SCALES -> ScaleHandout.of(key);
            default -> sentence.body().read(text -> LessonHandout.of(lesson(text, sitting), key));
        };
    }

    private static Handout voicings(String text, Key key) {
        int place = VOICINGS.length() + 1;
        try {
            Progression progression = Progression.parse(text.substring(place), key);
            return VoicingHandout.of(
                    progression,
                    VoicingSearch.best(VoicingTask.of(progression, VoicingStyle.SPREAD), 1)
                            .get(0)
                            .voicings());
        } catch (Unreadable unreadable) {
            throw unreadable.within(text, place);
        }
    }

    private static Lesson lesson(String text, Sitting sitting) {
        LibraryEntry entry = sitting.course()
                .library()
                .find(text)
                .orElseThrow(() -> Unreadable.because(
                        text,
                        0,
                        "a handout",
                        Clause.of("expected chords, scales, voicings, questions or a lesson"),
                        EXAMPLE));
        return sitting.course()
                .library()
                .read(entry)
                .lesson()
                .orElseThrow(() -> Unreadable.because(
                        text, 0, "a lesson", Clause.of("its file cannot be read; check says why"), EXAMPLE));
    }

    /** Says what was written, and where. */
    private record SheetWritten(List<String> files, Phrase title) implements Answer {
        @Override
        public StyledText text(Look look) {
            return StyledText.builder(look.reader())
                    .line(Phrase.of("{0}, written: {1}", title, Phrase.typed(String.join(", ", files))))
                    .build()
                    .wrapped(look.width());
        }

        @Override
        public void json(Json json) {
            json.put("kind", "sheet").put("files", files).put("title", title.toString());
        }
    }
}
