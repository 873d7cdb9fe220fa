package monochord.shell;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import monochord.course.FirstQuestions;
import monochord.course.JudgedAnswer;
import monochord.course.RoomLesson;
import monochord.harmony.Glossary;
import monochord.practice.Grade;
import monochord.practice.Question;
import monochord.shell.line.LineMode;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.ClassTeaching;
import monochord.shell.sitting.Conversation;
import monochord.shell.sitting.Sitting;
import monochord.shell.verb.Verbs;
import monochord.shell.verb.music.KeyRemark;
import monochord.shell.verb.song.SongPlaces;
import monochord.text.Phrase;
import monochord.text.naming.AsTyped;
import monochord.theory.note.Unreadable;
import monochord.view.Answer;
import monochord.view.Answers;
import monochord.view.NotebookRemark;
import monochord.view.RemarkedAnswer;
import monochord.view.Statement;

/**
 * Understands a line: as the answer to the open question, as a sentence with a verb, or as music.
 *
 * <p>Whatever is typed, an answer comes back; nothing a line holds ends the sitting.
 */
final class LineReading {
    private static final Pattern UNSURE = Pattern.compile("[^;{}=\"()]*[^;{}=\"()?!\\s]\\s*[?!]+");
    private static final Pattern DONE =
            Pattern.compile("(?i)(i'?m |i am |all )?(done|ready|finished|yes|ok|okay|got it|found it)[.!]?");
    private static final String SKIP = "skip";
    private static final String BACK = "back";
    private static final String HINT = "hint";
    private static final String QUIT = "quit";

    private final Verbs verbs;
    private final Sitting sitting;
    private final SmallTalk host;
    private final MusicLine music;
    private final Map<Verb, Usage> usages = new HashMap<>();

    LineReading(Verbs verbs, Sitting sitting) {
        this.verbs = verbs;
        this.sitting = sitting;
        this.host = new SmallTalk(verbs, sitting);
        this.music = new MusicLine(verbs, sitting, host);
        sitting.outside().take((Conversation) (line, other) -> new LineReading(verbs, other).read(line));
    }

    /** Answers a whole line. */
    Answer read(String line) {
        sitting.linePlace().begin();
        return sitting.linePlace().behind(GuardedLine.answer(line, this::understood));
    }

    /** Answers the sentence behind a verb. */
    Answer runSafely(Verb verb, String text) {
        return GuardedLine.answer(text, said -> run(verb, said));
    }

    private Answer understood(String line) {
        LineMode mode = sitting.mode();
        String text = line.strip();
        return switch (mode) {
            case OPEN_CELL -> inCell(line, text);
            case LONG_ANSWER -> inLongAnswer(text);
            case CONSENT -> atConsent(text);
            case NO_SOUND -> atSilence(text);
            case NEW_SONG ->
                sitting.song().newSong().flatMap(song -> song.read(text)).orElseGet(() -> sentence(text));
            case ROUND_PLAYED, REHEARSAL -> atRehearsal(text);
            default -> text.isEmpty() ? sitting.teaching().goOn() : sentence(text);
        };
    }

    /** In a cell all is Java but the two words that leave it. */
    private Answer inCell(String line, String text) {
        return switch (text.toLowerCase(Locale.ROOT)) {
            case SKIP -> sitting.cells().breakOff();
            case QUIT -> {
                sitting.cells().breakOff();
                yield sentence(text);
            }
            default -> sitting.cells().goOn(line);
        };
    }

    /** Whatever is typed instead of going on leaves the rest of a long answer, and is read as usual. */
    private Answer inLongAnswer(String text) {
        switch (text.toLowerCase(Locale.ROOT)) {
            case "":
                return sitting.longAnswer().more();
            case BACK:
                return sitting.longAnswer().before();
            case SKIP:
                sitting.longAnswer().leave();
                return new NotebookRemark(new Answers(List.of()));
            default:
                sitting.longAnswer().leave();
                return understood(text);
        }
    }

    /** What shall become of questions for the ear; whatever else is typed is read as usual. */
    private Answer atSilence(String text) {
        return switch (text.toLowerCase(Locale.ROOT)) {
            case "", SKIP, "leave", "leave out", "leave it out" ->
                sitting.teaching().silence().leave();
            case "files", "file", "sound files" -> sitting.teaching().silence().toFiles();
            case BACK, HINT -> run(verbs.find(text).orElseThrow(), "");
            default -> {
                sitting.teaching().silence().forget();
                yield sentence(text);
            }
        };
    }

    /** In which bar a round stumbled; whatever else is typed is read as usual. */
    private Answer atRehearsal(String text) {
        return text.matches("[0-9]{1,4}")
                ? sitting.teaching().rehearsing().stumbled(text)
                : text.isEmpty() ? sitting.teaching().goOn() : sentence(text);
    }

    private Answer atConsent(String text) {
        switch (text.toLowerCase(Locale.ROOT)) {
            case "yes":
                return sitting.outside().consent(true);
            case "", SKIP:
                return sitting.outside().consent(false);
            case BACK, HINT:
                return run(verbs.find(text).orElseThrow(), "");
            default:
                sitting.outside().forgetConsent();
                return sentence(text);
        }
    }

    private Answer sentence(String text) {
        String word = firstWord(text);
        Optional<Verb> verb = verbs.find(word);
        Optional<Answer> met = verb.flatMap(some -> host.meetVerb(text, word));
        if (met.isPresent()) {
            return met.get();
        }
        if (verb.isPresent() && !JavaText.declares(text, word)) {
            if (!verb.get().isAside()) {
                sitting.teaching().firstStart().giveWay();
            }
            return run(verb.get(), text.substring(word.length()).strip());
        }
        Optional<ClassTeaching> room = sitting.teaching().room().filter(open -> open.takes(text));
        if (room.isPresent()) {
            return called(text, room.get());
        }
        return atFirstStart(text)
                .or(() -> atInstrument(text))
                .orElseGet(() ->
                        sitting.question().isOpen() ? answer(unasked(text), word) : music.read(unasked(text), word));
    }

    /** What is called out in a room is an answer, unless it can be none and says that they would go on. */
    private Answer called(String text, ClassTeaching room) {
        if (room.isTooEarly(text)) {
            return Statement.of(Phrase.sentence("Nothing is asked just now; Enter goes on."));
        }
        Optional<RoomLesson.Called> judged = room.judge(text, sitting.naming());
        Optional<Answer> goesOn =
                judged.filter(one -> one.answer().isRead()).isPresent() ? Optional.empty() : host.goOn(text);
        return goesOn.or(() -> judged.map(room::take)).orElseGet(() -> room.inAnotherKey(text, sitting));
    }

    /** What follows a line that passes a first question, or says what the notes are called; none if it does neither. */
    private Optional<Answer> atFirstStart(String text) {
        return sitting.teaching()
                .firstStart()
                .questions()
                .flatMap(first -> FirstQuestions.passes(text)
                        ? Optional.of(sitting.teaching().goOn())
                        : first.asksForNames() ? FirstQuestions.naming(text).map(sitting::call) : Optional.empty());
    }

    /** Who says that the hands have found it goes on; a word for it is not counted. */
    private Optional<Answer> atInstrument(String text) {
        return sitting.mode() == LineMode.AT_INSTRUMENT && DONE.matcher(text).matches()
                ? Optional.of(sitting.teaching().goOn())
                : Optional.empty();
    }

    /** Whoever is not sure puts a question mark behind it: {@code Bb?} is B flat. */
    private static String unasked(String text) {
        return UNSURE.matcher(text).matches() ? text.replaceAll("[?!\\s]+$", "") : text;
    }

    /** What cannot be read as an answer may have been meant for a verb. */
    private Answer answer(String text, String word) {
        JudgedAnswer judged = sitting.teaching().judge(text);
        if (judged.isRead()) {
            return sitting.teaching().take(judged);
        }
        Optional<Phrase> told = Glossary.explain(text, judged.question().key());
        if (told.isPresent()) {
            return Statement.of(told.get());
        }
        return host.meet(text).orElseGet(() -> {
            Answer answer = sitting.teaching().take(judged);
            return ForeignNoteNames.in(text, sitting.naming(), english -> isRead(judged.question(), english))
                    .or(() -> music.didYouMean(word))
                    .map(advice -> Answers.of(answer, Statement.of(advice)))
                    .orElse(answer);
        });
    }

    private static boolean isRead(Question question, String answer) {
        return question.judge(answer).grade() != Grade.UNREADABLE;
    }

    /** What was typed behind a verb, by the note names the learner goes by: behind an option stand file names and numbers, unless it is an answer. */
    private AsTyped heard(Verb verb, String text) {
        int option = text.contains("--answer") ? -1 : text.indexOf("--");
        int end = !verb.readsMusic() ? 0 : option < 0 ? text.length() : option;
        return AsTyped.upTo(end, text, sitting.naming(), place -> verb.isNoName(text, place));
    }

    private Sentence sentence(Verb verb, Usage usage, AsTyped typed) {
        String english = typed.english();
        String valued = verb.takesVariables() ? sitting.cells().filled(english) : english;
        String filled = SongPlaces.filled(valued, usage, sitting);
        return verb.readsWhole() ? Sentence.whole(filled) : Sentence.parse(filled, usage);
    }

    /** Runs one verb on the text behind it. Places in a refusal count from the start of that text. */
    private Answer run(Verb verb, String text) {
        Usage usage = usages.computeIfAbsent(verb, Verb::usage);
        AsTyped typed = heard(verb, text);
        try {
            Sentence sentence = sentence(verb, usage, typed);
            return remarked(verb.run(sentence, sitting), sentence, usage);
        } catch (Unreadable unreadable) {
            return MusicLine.refusal(unreadable, typed, usage.formIfAny());
        }
    }

    /** With a word on the key, where the music that was read clearly stands in another. */
    private Answer remarked(Answer answer, Sentence sentence, Usage usage) {
        return answer.status() == Answer.DONE
                ? KeyRemark.of(sentence, usage, sitting)
                        .map(remark -> (Answer) new RemarkedAnswer(answer, remark))
                        .orElse(answer)
                : answer;
    }

    static String firstWord(String text) {
        int end = 0;
        while (end < text.length() && !Character.isWhitespace(text.charAt(end))) {
            end++;
        }
        return text.substring(0, end);
    }
}
