package monochord.shell.sitting;

import java.util.List;
import java.util.Optional;
import monochord.cell.CellFailure;
import monochord.cell.CellMusic;
import monochord.cell.CellReport;
import monochord.harmony.Music;
import monochord.view.Answer;
import monochord.view.Statement;
import monochord.view.music.BorrowAnswer;
import monochord.view.music.BorrowedAnswer;
import monochord.view.music.KeyAnswer;
import monochord.view.music.MusicAnswer;
import monochord.view.music.VoiceAnswer;
import monochord.view.notebook.CellAnswer;
import monochord.view.notebook.CellTrouble;

/** How the report of a cell is shown: music as the verbs show it, all else as text. */
public final class CellAnswers {
    private CellAnswers() {}

    /** @param text the whole cell */
    public static Answer of(CellReport report, String text) {
        if (!report.notRun().isEmpty()) {
            return Statement.failed(report.notRun());
        }
        List<CellAnswer.AnswerItem> parts =
                report.parts().stream().map(CellAnswers::shown).toList();
        return new CellAnswer(parts, report.unprinted(), trouble(report.failure(), text));
    }

    private static CellAnswer.AnswerItem shown(CellReport.ReportItem part) {
        if (part instanceof CellReport.Printed printed) {
            return new CellAnswer.PrintedText(printed.text());
        } else if (part instanceof CellReport.Notice notice) {
            return new CellAnswer.NoticeText(notice.said());
        }
        CellReport.CellValue value = (CellReport.CellValue) part;
        Answer music = value.music() == null ? null : drawn(value.music());
        return new CellAnswer.ValueLine(value.name(), value.type(), value.text(), music);
    }

    private static Answer drawn(CellMusic music) {
        if (music instanceof CellMusic.InKey one) {
            return MusicAnswer.of(one.heard(), one.key());
        } else if (music instanceof CellMusic.OneKey one) {
            return new KeyAnswer(one.key());
        } else if (music instanceof CellMusic.Voiced voiced) {
            return new VoiceAnswer(List.of(voiced.voicing()), false);
        }
        CellMusic.BorrowedChords borrowed = (CellMusic.BorrowedChords) music;
        return borrowed.chords().size() == 1
                ? new BorrowedAnswer(borrowed.key(), borrowed.chords().get(0))
                : new BorrowAnswer(borrowed.key(), null, borrowed.chords());
    }

    private static CellTrouble trouble(CellFailure failure, String text) {
        return failure == null
                ? null
                : new CellTrouble(failure.message(), text, failure.place(), failure.line(), status(failure.kind()));
    }

    private static int status(CellFailure.FailureKind kind) {
        return switch (kind) {
            case NOT_JAVA -> Answer.UNREADABLE;
            case THROWN, STOPPED -> Answer.NO;
            case BROKEN -> Answer.FAILED;
        };
    }

    /** What is to be heard of the music that was shown last. */
    static Optional<Music> lastMusic(CellReport report) {
        return report.parts().stream()
                .filter(CellReport.CellValue.class::isInstance)
                .map(part -> ((CellReport.CellValue) part).music())
                .filter(music -> music != null)
                .reduce((earlier, later) -> later)
                .map(CellMusic::heard);
    }
}
