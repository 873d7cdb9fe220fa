package monochord.shell.sitting;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import monochord.file.WholeFile;
import monochord.song.Song;
import monochord.song.SongFault;
import monochord.text.Phrase;
import monochord.text.naming.AsTyped;
import monochord.view.Answer;
import monochord.view.Answers;
import monochord.view.Statement;
import monochord.view.music.SongAnswer;

/** A song that is begun: what it needs is asked for line by line, and each answer is in its file before the next question. */
public final class NewSong {
    private final Sitting sitting;
    private final Path file;
    private final String name;
    private final Deque<NewSongText> before = new ArrayDeque<>();
    private NewSongText text;
    private boolean isKept;

    NewSong(Sitting sitting, Path file, String name, NewSongText begun) {
        this.sitting = sitting;
        this.file = file;
        this.name = name;
        this.text = begun;
    }

    /** What is asked first. */
    Answer begin() {
        boolean isNew = text.step() == NewSongText.SongQuestion.TITLE;
        return Statement.of(
                isNew
                        ? Phrase.sentence(
                                "{0} is not there yet: a song is begun in it. skip leaves off at any time.",
                                Phrase.typed(name))
                        : Phrase.sentence("{0} is begun and has no section yet.", Phrase.typed(name)),
                text.question());
    }

    /** What is asked for is taken as it stands; none for the words that lead elsewhere, and for help. */
    public Optional<Answer> read(String line) {
        String word = line.toLowerCase(java.util.Locale.ROOT);
        if (word.equals("quit")) {
            end();
        }
        return switch (word) {
            case "skip" -> Optional.of(end());
            case "back" -> Optional.of(back());
            case "hint" -> Optional.of(hint());
            case "quit" -> Optional.empty();
            default ->
                word.equals("help") || word.startsWith("help ")
                        ? Optional.empty()
                        : Optional.of(take(AsTyped.of(line, sitting.naming()).english()));
        };
    }

    /**
     * Takes an answer, as it is in English, or Enter, which goes on without one.
     *
     * @throws monochord.theory.note.Unreadable if it is not what was asked for
     */
    private Answer take(String answer) {
        NewSongText next = answer.isEmpty() ? text.without() : text.with(answer);
        Optional<SongFault> fault = next.newFault(text);
        if (fault.isPresent()) {
            return Statement.no(
                    Phrase.sentence("{0}; {1}.", fault.get().what(), fault.get().instead()), text.question());
        }
        before.push(text);
        text = next;
        isKept |= !answer.isEmpty();
        Optional<Answer> failed = isKept ? keep() : Optional.empty();
        if (failed.isPresent()) {
            sitting.song().leaveNew();
            return failed.get();
        }
        return text.step() == NewSongText.SongQuestion.DONE ? end() : Statement.of(text.question());
    }

    /** One step back; the first has none before it. */
    private Answer back() {
        if (before.isEmpty()) {
            return Statement.no(Phrase.sentence("There is nothing to go back to."));
        }
        text = before.pop();
        return isKept ? keep().orElseGet(() -> Statement.of(text.question())) : Statement.of(text.question());
    }

    /** What an answer may look like. */
    private Answer hint() {
        return Statement.of(text.step().hint());
    }

    private Optional<Answer> keep() {
        try {
            String content = text.song().toString();
            WholeFile.write(file, part -> Files.writeString(part, content));
            return Optional.empty();
        } catch (IOException failed) {
            return Optional.of(Statement.failed(sitting.outside().told(failed)));
        }
    }

    /** Leaves off: what was answered stands in the file and is open. */
    private Answer end() {
        sitting.song().leaveNew();
        if (!isKept) {
            return Statement.of(Phrase.sentence("Nothing was begun."));
        }
        Song song = text.song();
        sitting.song().open(song, file);
        sitting.song().holds(name, song.toString());
        sitting.song().remember(sitting);
        sitting.settle(song.head().key());
        Phrase kept = Phrase.sentence("It is kept in {0}.", Phrase.typed(name));
        List<String> sections =
                song.sections().stream().map(section -> section.name()).toList();
        Phrase next = sections.isEmpty()
                ? Phrase.sentence("{0} goes on with it.", Phrase.verb("song " + name))
                : Phrase.sentence(
                        "{0} proposes a change, {1} sounds it.",
                        Phrase.verb("recolour " + sections.get(0).toLowerCase(java.util.Locale.ROOT)),
                        Phrase.verb("play " + sections.get(0).toLowerCase(java.util.Locale.ROOT)));
        return Answers.of(new SongAnswer(song), Statement.of(kept.then(next)));
    }
}
