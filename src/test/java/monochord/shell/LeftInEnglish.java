package monochord.shell;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import monochord.lesson.ProseBlock;
import monochord.text.Phrase;
import monochord.view.Answer;
import monochord.view.ProseAnswer;
import monochord.view.advice.AfterAnswer;
import monochord.view.course.ProgressTable;
import monochord.view.course.SkillsAnswer;
import monochord.view.music.SongAnswer;
import monochord.view.notebook.CellAnswer;

/** Kinds of text that are no phrases, each with its reason. The list may only shrink. */
enum LeftInEnglish {
    /** A lesson is written in a language; another language has lessons of its own. */
    PROSE(ProseAnswer.class),
    /** Persons, and the titles of what they made. */
    CITATIONS(AfterAnswer.class),
    /** What its writer has put into a song: title, words, sections, reasons. */
    SONG(SongAnswer.class),
    SONG_OF_STATEMENT(SongAnswer.SongStatement.class),
    /** Columns that other programs read. */
    COLUMNS(ProgressTable.class),
    /** What is typed behind a verb that asks, as its reading has it. */
    SUBJECTS(SkillsAnswer.class),
    /** What Java's own compiler and a cell say: they come from another JVM as texts. */
    JAVA(CellAnswer.class);

    private final Class<? extends Answer> where;

    LeftInEnglish(Class<? extends Answer> where) {
        this.where = where;
    }

    /** The kind that an answer may have, if one. */
    static Optional<LeftInEnglish> where(Answer answer) {
        return Arrays.stream(values())
                .filter(kind -> kind.where == answer.getClass())
                .findFirst();
    }

    /** What of an answer is of this kind, in English. */
    String of(Answer answer) {
        return switch (this) {
            case PROSE ->
                ((ProseAnswer) answer).blocks().stream().map(ProseBlock::plain).collect(Collectors.joining(" "));
            case CITATIONS ->
                "McGill Billboard, J. A. Burgoyne, J. Wild, I. Fujinaga, D. Temperley, T. de Clercq, When in Rome,"
                        + " M. Gotham";
            case SONG -> ((SongAnswer) answer).song().toString();
            case SONG_OF_STATEMENT -> ((SongAnswer.SongStatement) answer).song().toString();
            case COLUMNS -> "skill,key,mastery,recall,stability_days,asked,right,seconds,last,due";
            case SUBJECTS -> "major";
            case JAVA -> told((CellAnswer) answer);
        };
    }

    private static String told(CellAnswer cell) {
        Stream<Phrase> notices = cell.parts().stream()
                .filter(CellAnswer.NoticeText.class::isInstance)
                .map(notice -> ((CellAnswer.NoticeText) notice).said());
        Stream<Phrase> trouble = Stream.ofNullable(cell.trouble()).flatMap(met -> met.message().stream());
        return Stream.concat(notices, trouble).map(Phrase::toString).collect(Collectors.joining(" "));
    }
}
