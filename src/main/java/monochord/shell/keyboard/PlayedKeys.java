package monochord.shell.keyboard;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import monochord.practice.AnswerForm;
import monochord.practice.Question;
import monochord.shell.line.LineState;
import monochord.shell.playback.Breaks;
import monochord.shell.sitting.PlaybackState;
import monochord.sound.keyboard.KeyEvent;
import monochord.text.Phrase;
import monochord.text.Style;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.note.NoteName;
import monochord.theory.note.NoteNaming;
import monochord.view.Statement;
import monochord.view.keyboard.MovingKeyboard;

/** What becomes of what is played: a picture, a name, an answer. Used by one thread. */
final class PlayedKeys {
    private static final Phrase FINGERS_DO_NOT_SPELL =
            Phrase.of("The letters are mine: spelling is not asked of the fingers.");
    private static final MovingKeyboard MIDDLE = new MovingKeyboard(48, 83);

    private final PlaybackState stage;
    private final PlayedAnswerHint invitation = new PlayedAnswerHint();
    private final List<Chord> row = new ArrayList<>();
    private Gestures gestures = new Gestures();
    private MovingKeyboard keyboard = MIDDLE;
    private Key key = Key.major(NoteName.C);
    private NoteNaming naming = NoteNaming.ENGLISH;
    private Optional<Question> question = Optional.empty();
    private boolean seated;
    private boolean named;
    private boolean shown;

    PlayedKeys(PlaybackState stage) {
        this.stage = stage;
    }

    /** Whether nothing will happen by itself while no key is touched. */
    boolean isQuiet() {
        return gestures.isQuiet();
    }

    void says(Phrase words) {
        stage.board().say(Statement.of(words.styled(Style.QUIET)));
    }

    /** Somebody sits down at a keyboard, or leaves it. */
    void sits(boolean down) {
        seated = down;
        forget();
    }

    /** All that was played so far comes to nothing. */
    void forget() {
        gestures = new Gestures();
        row.clear();
        draw();
    }

    /** The line waits, perhaps for the answer to another question. */
    void waits(LineState scene) {
        if (!question.equals(scene.question())) {
            row.clear();
        }
        key = scene.question().map(Question::key).orElse(scene.key());
        naming = scene.naming();
        question = scene.question();
        if (seated) {
            question.flatMap(invitation::to).ifPresent(this::says);
            draw();
        }
    }

    /** @param now milliseconds */
    void hears(KeyEvent stroke, long now) {
        named = false;
        if (stroke instanceof KeyEvent.Down down) {
            gestures.press(down.key(), now);
            widen(down.key());
            if (stage.breaks().isDue()) {
                stage.board().say(Statement.of(Breaks.CAUTION.styled(Style.QUIET)));
            }
        } else if (stroke instanceof KeyEvent.Up up) {
            gestures.release(up.key(), now);
        } else {
            gestures.releaseAll(now);
        }
        draw();
    }

    private void widen(int pressed) {
        keyboard = new MovingKeyboard(Math.min(keyboard.lowest(), pressed), Math.max(keyboard.highest(), pressed));
    }

    /** Time goes by: keys have come to rest, a gesture is over. */
    void passes(long now) {
        if (gestures.steady(now).isPresent()) {
            named = question.isEmpty();
            draw();
        }
        gestures.over(now).ifPresent(this::answer);
    }

    private void answer(Gesture played) {
        question.filter(open -> PlayedAnswer.isPlayable(open.form())).ifPresent(open -> answer(open, played));
    }

    private void answer(Question open, Gesture played) {
        PlayedAnswer answer = new PlayedAnswer(open);
        if (open.form() == AnswerForm.PROGRESSION) {
            inRow(answer, played);
        } else {
            answer.line(played).ifPresent(line -> enter(line, open));
        }
    }

    private void inRow(PlayedAnswer answer, Gesture played) {
        if (played instanceof Gesture.KeysInTurn && !row.isEmpty()) {
            row.remove(row.size() - 1);
        } else if (played instanceof Gesture.KeysTogether) {
            answer.inRow(played, row.size()).ifPresent(row::add);
        }
        draw();
        if (!row.isEmpty() && row.size() >= answer.rowLength()) {
            answer.line(row).ifPresent(line -> enter(line, question.orElseThrow()));
        }
    }

    /** Until the line waits again no question is open, and the hands are to leave the keys. */
    private void enter(PlayedLine line, Question open) {
        String english = line.english();
        boolean letters = open.form() == AnswerForm.NOTES && (english.contains("b") || english.contains("#"));
        if (letters && open.judge(english).grade().isRight()) {
            says(FINGERS_DO_NOT_SPELL);
        }
        question = Optional.empty();
        row.clear();
        gestures.rest();
        draw();
        stage.board().enter(line.typed(naming));
    }

    /** What sounds has the board before what is held. */
    private void draw() {
        List<Integer> keys = gestures.down();
        boolean empty = keys.isEmpty() && row.isEmpty();
        if (stage.ear().heard().isPresent() || empty && !shown) {
            return;
        }
        shown = !empty;
        if (empty) {
            keyboard = MIDDLE;
            stage.board().clear();
        } else {
            HeldKeysPicture view = new HeldKeysPicture(keyboard, keys, key, named, List.copyOf(row), rowLength());
            stage.board().show(view::picture);
        }
    }

    private int rowLength() {
        return question.map(open -> new PlayedAnswer(open).rowLength()).orElse(0);
    }
}
