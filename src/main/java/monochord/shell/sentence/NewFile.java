package monochord.shell.sentence;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import monochord.file.WholeFile;
import monochord.shell.sitting.Sitting;
import monochord.text.Phrase;
import monochord.theory.note.Unreadable;
import monochord.view.Answer;
import monochord.view.NotebookRemark;
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
    public static NewFile named(Sentence.SentencePart option, String name, Sitting sitting, WholeFile.Content content) {
        return new NewFile(name, option.read(text -> sitting.outside().file(text.isEmpty() ? text : name)), content);
    }

    /** {@code loop.pdf} for an alto sax: {@code loop-alto-sax.pdf}. */
    public static String behind(String file, String what) {
        int end = file.lastIndexOf('.') > file.lastIndexOf('/') ? file.lastIndexOf('.') : file.length();
        return file.substring(0, end) + "-" + what.toLowerCase(Locale.ROOT).replace(' ', '-') + file.substring(end);
    }

    /** The same for text, in UTF-8. */
    public static Optional<NewFile> text(Sentence sentence, String option, Sitting sitting, Supplier<String> text) {
        return of(sentence, option, sitting, part -> Files.writeString(part, text.get()));
    }

    /** Where a file goes, and its name as it was typed. */
    public record NamedPath(String name, Path path) {}

    /**
     * Writes all of them, or none where one is there already. The answer is no part of a notebook.
     *
     * @param done what is said when they are written
     * @throws Unreadable if two have one name
     */
    public static Answer write(List<NewFile> files, Sentence sentence, Sitting sitting, Answer done) {
        return new NotebookRemark(writeNoted(files, sentence, sitting, done));
    }

    /** The same as part of a notebook. */
    public static Answer writeNoted(List<NewFile> files, Sentence sentence, Sitting sitting, Answer done) {
        return unlessThere(
                files.stream().map(file -> new NamedPath(file.name, file.path)).toList(),
                sentence,
                sitting,
                () -> write(files, sitting).orElse(done));
    }

    /**
     * Has them written where none of them is there, or it was said that they may be replaced.
     *
     * @param writing writes them and says what came of it: now, or after a yes
     * @throws Unreadable if two have one name
     */
    public static Answer unlessThere(
            List<NamedPath> files, Sentence sentence, Sitting sitting, Supplier<Answer> writing) {
        if (files.stream().map(file -> file.path.normalize()).distinct().count() < files.size()) {
            throw Unreadable.because(
                    sentence.whole(), 0, "a sentence", "each file needs a name of its own", "--html song.html");
        }
        List<Phrase> there = files.stream()
                .filter(file -> Files.isRegularFile(file.path))
                .map(file -> Phrase.typed(file.name))
                .toList();
        return there.isEmpty() || sentence.has(OVER)
                ? writing.get()
                : new NotebookRemark(refuse(there.size(), Phrase.list(there), sitting, writing));
    }

    private static Answer refuse(int count, Phrase there, Sitting sitting, Supplier<Answer> writing) {
        if (!sitting.isAttended()) {
            return Statement.failed(Phrase.counted(
                    count,
                    "{0} is there already, and nothing was written; {1} puts this in its place.",
                    "{0} are there already, and nothing was written; {1} puts these in their place.",
                    there,
                    Phrase.typed("--" + OVER)));
        }
        sitting.outside()
                .askConsent(
                        () -> new NotebookRemark(writing.get()),
                        () -> new NotebookRemark(Statement.of(Phrase.sentence("Nothing was written."))));
        return Statement.failed(Phrase.counted(
                count,
                "{0} is there already. Type yes to put this in its place; any other line leaves it alone.",
                "{0} are there already. Type yes to put these in their place; any other line leaves them alone.",
                there));
    }

    /** Writes all of them over whatever is there; an answer where that fails. */
    private static Optional<Answer> write(List<NewFile> files, Sitting sitting) {
        try {
            for (NewFile file : files) {
                WholeFile.write(file.path, file.content);
            }
            return Optional.empty();
        } catch (IOException failed) {
            return Optional.of(Statement.failed(sitting.outside().told(failed)));
        }
    }
}
