package monochord.shell.verb.paper;

import static monochord.shell.sentence.FormPart.clause;
import static monochord.shell.sentence.FormPart.may;
import static monochord.shell.sentence.FormPart.option;
import static monochord.shell.sentence.FormPart.words;

import java.util.List;
import java.util.Locale;
import monochord.paper.ChordHandout;
import monochord.paper.Handout;
import monochord.paper.ScaleHandout;
import monochord.shell.sentence.NewFile;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.SentenceKey;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Value;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.Sitting;
import monochord.text.Phrase;
import monochord.text.Reader;
import monochord.text.StyledText;
import monochord.theory.Key;
import monochord.theory.note.Signs;
import monochord.theory.note.Unreadable;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;

/** Makes a handout: the chords of a key, or the scales on a tonic. */
final class SheetVerb implements Verb {
    private static final String EXAMPLE = "sheet chords in D --html chords.html";
    private static final String CHORDS = "chords";
    private static final String SCALES = "scales";
    private static final String HTML = "html";

    @Override
    public String word() {
        return "sheet";
    }

    @Override
    public Usage usage() {
        return Usage.of(
                        word(),
                        Usage.VerbTopic.TEACHING,
                        Phrase.of("make a handout with notes, keyboards and staves, as a page to print"))
                .form(
                        words(CHORDS, SCALES),
                        may(clause("in", Value.KEY)),
                        option(HTML, Value.OUT),
                        may(option(NewFile.OVER)))
                .examples(EXAMPLE, "sheet scales in Eb --html scales.html");
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        Key key = SentenceKey.of(sentence, sitting);
        Handout handout = sentence.body().read(text -> handout(text, key));
        if (!sentence.has(HTML)) {
            throw Unreadable.because(
                    sentence.whole(),
                    sentence.whole().length(),
                    "a handout",
                    "it has to be said where it goes",
                    EXAMPLE);
        }
        Reader reader = Reader.of(Signs.MUSIC.with(sitting.naming()));
        NewFile file = NewFile.text(sentence, HTML, sitting, () -> handout.page(reader))
                .orElseThrow();
        return NewFile.write(List.of(file), sentence, sitting, new SheetWritten(file.name(), handout.title()));
    }

    private static Handout handout(String text, Key key) {
        return switch (text.toLowerCase(Locale.ROOT)) {
            case CHORDS -> ChordHandout.of(key);
            case SCALES -> ScaleHandout.of(key);
            default -> throw Unreadable.because(text, 0, "a handout", "expected chords or scales", EXAMPLE);
        };
    }

    /** Says what was written, and where. */
    private record SheetWritten(String file, Phrase title) implements Answer {
        @Override
        public StyledText text(Look look) {
            return StyledText.builder(look.reader())
                    .line(Phrase.of("{0}, written: {1}", title, Phrase.typed(file)))
                    .build()
                    .wrapped(look.width());
        }

        @Override
        public void json(Json json) {
            json.put("kind", "sheet").put("files", List.of(file)).put("title", title.toString());
        }
    }
}
