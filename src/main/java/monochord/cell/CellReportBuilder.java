package monochord.cell;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import monochord.cell.protocol.EncodedValue;
import monochord.cell.protocol.Message;
import monochord.text.Phrase;
import monochord.text.SafeText;
import monochord.theory.Key;

/** Gathers what a cell says while it runs. Nothing of it reaches the terminal as it came, and there is only so much. */
final class CellReportBuilder {
    private static final int MOST_PARTS = 200;
    private static final int MOST_PRINTED = 12_000;
    private static final int MOST_LISTENED = 16;

    private final String text;
    private final Key key;
    private final List<CellReport.ReportItem> parts = new ArrayList<>();
    private final StringBuilder printed = new StringBuilder();
    private final List<CellReport.Play> plays = new ArrayList<>();
    private int room = MOST_PRINTED;
    private int unprinted;
    private CellFailure failure;

    /** @param key the key of the line */
    CellReportBuilder(String text, Key key) {
        this.text = text;
        this.key = key;
    }

    void take(Message said) {
        switch (said.kind()) {
            case PRINTED -> print(SafeText.clean(said.text(0)));
            case VALUE -> EncodedValue.in(said, 2).ifPresent(told -> value(said, told));
            case SHOW -> EncodedValue.in(said, 0).ifPresent(told -> value(Message.of(said.kind()), told));
            case PLAY ->
                EncodedValue.in(said, 1).ifPresent(told -> play(said.number(0, 0), new CellMusicReader(told, key)));
            case NOTICE -> add(new CellReport.Notice(Phrase.typed(said.text(0))));
            case TROUBLE -> failure = failure(said);
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

    private void value(Message said, EncodedValue told) {
        add(new CellReport.CellValue(
                SafeText.oneLine(said.text(0)),
                SafeText.oneLine(said.text(1)),
                SafeText.clean(told.part(0)),
                new CellMusicReader(told, key).music().orElse(null)));
    }

    private void play(int tempo, CellMusicReader value) {
        if (plays.size() < MOST_LISTENED) {
            value.heard().ifPresent(music -> plays.add(new CellReport.Play(music, value.key(), tempo)));
        }
    }

    private CellFailure failure(Message said) {
        int place = Math.min(said.number(1, -1), text.length());
        CellFailure.FailureKind kind = place < 0 ? CellFailure.FailureKind.THROWN : CellFailure.FailureKind.NOT_JAVA;
        List<Phrase> message =
                SafeText.clean(said.text(0)).lines().map(Phrase::typed).toList();
        return new CellFailure(kind, message, place, said.number(2, 0));
    }

    private void add(CellReport.ReportItem part) {
        flush();
        if (parts.size() < MOST_PARTS) {
            parts.add(part);
        }
    }

    private void flush() {
        if (printed.length() > 0) {
            parts.add(new CellReport.Printed(printed.toString()));
            printed.setLength(0);
        }
    }

    /** Says how it ended where the cell could not say so itself. */
    void end(RunEnd end, Duration limit) {
        if (!end.words().isEmpty()) {
            Phrase length = end == RunEnd.TOO_LONG ? length(limit) : Phrase.NOTHING;
            failure = CellFailure.of(end.kind(), end.words().then(length));
        }
        if (end != RunEnd.GOOD && end != RunEnd.REFUSED) {
            plays.clear();
        }
    }

    private static Phrase length(Duration limit) {
        int seconds = (int) limit.toSeconds();
        return Phrase.counted(seconds, "That is {0} second.", "That is {0} seconds.", seconds);
    }

    void fail(Phrase message) {
        failure = CellFailure.of(CellFailure.FailureKind.BROKEN, message);
    }

    /** Says how it goes on after an end. */
    void goesOn(Phrase news) {
        if (!news.isEmpty() && failure != null) {
            failure = failure.goingOn(news);
        } else if (!news.isEmpty()) {
            add(new CellReport.Notice(news));
        }
    }

    CellReport report() {
        flush();
        return new CellReport(parts, unprinted, failure, plays, Phrase.NOTHING);
    }
}
