package monochord.shell.verb.paper;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import monochord.file.WholeFile;
import monochord.shell.sentence.Sentence;
import monochord.shell.sitting.Sitting;
import monochord.text.Phrase;
import monochord.theory.note.Unreadable;
import monochord.view.Answer;
import monochord.view.Aside;
import monochord.view.Statement;

/**
 * A file that is to be written. One that is there already stays, unless {@code --over} is said; where a person sits, they
 * are asked.
 *
 * @param name as it was typed
 */
public record NewFile(String name, Path path, WholeFile.Content content) {
    /** The option that allows to put it in the place of what is there. */
    public static final String OVER = "over";

    /** The file that an option names, if it is there. */
    public static Optional<NewFile> of(Sentence sentence, String option, Sitting sitting, WholeFile.Content content) {
        return sentence.option(option)
                .map(part -> new NewFile(part.text(), part.read(sitting.outside()::file), content));
    }

    /** One of several files that an option asks for, beside the one that it names. */
    static NewFile named(Sentence.Part option, String name, Sitting sitting, WholeFile.Content content) {
        return new NewFile(name, option.read(text -> sitting.outside().file(text.isEmpty() ? text : name)), content);
    }

    /** {@code loop.pdf} for an alto sax: {@code loop-alto-sax.pdf}. */
    static String behind(String file, String what) {
        int end = file.lastIndexOf('.') > file.lastIndexOf('/') ? file.lastIndexOf('.') : file.length();
        return file.substring(0, end) + "-" + what.toLowerCase(Locale.ROOT).replace(' ', '-') + file.substring(end);
    }

    /** The same for text, in UTF-8. */
    public static Optional<NewFile> text(Sentence sentence, String option, Sitting sitting, Supplier<String> text) {
        return of(sentence, option, sitting, part -> Files.writeString(part, text.get()));
    }

    /**
     * Writes all of them, or none where one is there already.
     *
     * @param done what is said when they are written
     * @throws Unreadable if two have one name
     */
    public static Answer write(List<NewFile> files, Sentence sentence, Sitting sitting, Answer done) {
        if (files.stream().map(file -> file.path.normalize()).distinct().count() < files.size()) {
            throw Unreadable.because(
                    sentence.whole(), 0, "a sentence", "each file needs a name of its own", "--html song.html");
        }
        List<String> there = files.stream()
                .filter(file -> Files.exists(file.path))
                .map(NewFile::name)
                .toList();
        return there.isEmpty() || sentence.has(OVER)
                ? write(files, sitting, done)
                : refuse(there, files, sitting, done);
    }

    private static Answer refuse(List<String> there, List<NewFile> files, Sitting sitting, Answer done) {
        Phrase names = Phrase.list(there.stream().map(Phrase::typed).toList());
        if (!sitting.isAttended()) {
            return new Aside(Statement.failed(Phrase.counted(
                    there.size(),
                    "{0} is there already, and nothing was written; {1} puts this in its place.",
                    "{0} are there already, and nothing was written; {1} puts these in their place.",
                    names,
                    Phrase.typed("--" + OVER))));
        }
        sitting.outside()
                .askConsent(
                        () -> write(files, sitting, done),
                        () -> new Aside(Statement.of(Phrase.sentence("Nothing was written."))));
        return new Aside(Statement.failed(Phrase.counted(
                there.size(),
                "{0} is there already. Type yes to put this in its place; any other line leaves it alone.",
                "{0} are there already. Type yes to put these in their place; any other line leaves them alone.",
                names)));
    }

    private static Answer write(List<NewFile> files, Sitting sitting, Answer done) {
        try {
            for (NewFile file : files) {
                WholeFile.write(file.path, file.content);
            }
            return new Aside(done);
        } catch (IOException failed) {
            return new Aside(Statement.failed(sitting.outside().told(failed)));
        }
    }
}
