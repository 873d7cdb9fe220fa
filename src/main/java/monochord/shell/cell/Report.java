package monochord.shell.cell;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import monochord.harmony.Music;
import monochord.shell.cell.wire.Message;
import monochord.shell.cell.wire.Told;
import monochord.text.Phrase;
import monochord.text.SafeText;
import monochord.theory.Key;
import monochord.view.Answer;
import monochord.view.notebook.CellAnswer;
import monochord.view.notebook.CellTrouble;

/** Gathers what a cell says while it runs. Nothing of it reaches the terminal as it came, and there is only so much. */
final class Report {
    private static final int MOST_PARTS = 200;
    private static final int MOST_PRINTED = 12_000;
    private static final int MOST_LISTENED = 16;

    private final String text;
    private final Key key;
    private final List<CellAnswer.Part> parts = new ArrayList<>();
    private final StringBuilder printed = new StringBuilder();
    private final List<Outcome.Play> plays = new ArrayList<>();
    private int room = MOST_PRINTED;
    private int unprinted;
    private Music shown;
    private CellTrouble trouble;

    /** @param key the key of the line */
    Report(String text, Key key) {
        this.text = text;
        this.key = key;
    }

    void take(Message said) {
        switch (said.kind()) {
            case PRINTED -> print(SafeText.clean(said.text(0)));
            case VALUE -> Told.in(said, 2).ifPresent(told -> value(said, told));
            case SHOW -> Told.in(said, 0).ifPresent(told -> value(Message.of(said.kind()), told));
            case PLAY -> Told.in(said, 1).ifPresent(told -> play(said.number(0, 0), new Shown(told, key)));
            case NOTICE -> add(new CellAnswer.Notice(Phrase.typed(said.text(0))));
            case TROUBLE -> trouble = trouble(said);
            case DONE -> unprinted += Math.max(0, said.number(1, 0));
            default -> {}
        }
    }

    private void print(String some) {
        int shownLength = Math.min(room, some.length());
        printed.append(some, 0, shownLength);
        room -= shownLength;
        unprinted += some.length() - shownLength;
    }

    private void value(Message said, Told told) {
        Shown value = new Shown(told, key);
        Optional<Answer> music = value.answer();
        music.flatMap(drawn -> value.music()).ifPresent(heard -> shown = heard);
        add(new CellAnswer.Value(
                SafeText.oneLine(said.text(0)),
                SafeText.oneLine(said.text(1)),
                SafeText.clean(told.part(0)),
                music.orElse(null)));
    }

    private void play(int tempo, Shown value) {
        if (plays.size() < MOST_LISTENED) {
            value.music().ifPresent(music -> plays.add(new Outcome.Play(music, value.key(), tempo)));
        }
    }

    private CellTrouble trouble(Message said) {
        int place = Math.min(said.number(1, -1), text.length());
        List<Phrase> message =
                SafeText.clean(said.text(0)).lines().map(Phrase::typed).toList();
        return new CellTrouble(message, text, place, said.number(2, 0), place < 0 ? Answer.NO : Answer.UNREADABLE);
    }

    private void add(CellAnswer.Part part) {
        flush();
        if (parts.size() < MOST_PARTS) {
            parts.add(part);
        }
    }

    private void flush() {
        if (printed.length() > 0) {
            parts.add(new CellAnswer.Printed(printed.toString()));
            printed.setLength(0);
        }
    }

    /** Says how it ended where the cell could not say so itself. */
    void end(End end, Duration limit) {
        if (!end.words().isEmpty()) {
            Phrase length = end == End.TOO_LONG ? length(limit) : Phrase.NOTHING;
            trouble = trouble(end.words().then(length), end.status());
        }
        if (end != End.GOOD && end != End.REFUSED) {
            plays.clear();
        }
    }

    private static Phrase length(Duration limit) {
        int seconds = (int) limit.toSeconds();
        return Phrase.counted(seconds, "That is {0} second.", "That is {0} seconds.", seconds);
    }

    private CellTrouble trouble(Phrase message, int status) {
        return new CellTrouble(List.of(message), text, -1, 0, status);
    }

    void fail(Phrase message) {
        trouble = trouble(message, Answer.FAILED);
    }

    /** Says how it goes on after an end. */
    void goesOn(Phrase news) {
        if (!news.isEmpty() && trouble != null) {
            trouble = trouble(Phrase.row(trouble.message()).then(news), trouble.status());
        } else if (!news.isEmpty()) {
            add(new CellAnswer.Notice(news));
        }
    }

    Outcome outcome() {
        flush();
        return new Outcome(new CellAnswer(parts, unprinted, trouble), plays, shown);
    }
}
