package monochord.shell.sitting;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import monochord.harmony.Music;
import monochord.sound.Performance;

/** Where music is shown and heard: what plays, what moves with it, and what was there last. */
public final class Stage {
    private final Ear ear;
    private final List<Consumer<Scene>> onlookers = new CopyOnWriteArrayList<>();
    private Board board = Board.none();
    private Music lastMusic;
    private Performance lastPerformance;

    Stage(Ear ear) {
        this.ear = ear;
    }

    public Ear ear() {
        return ear;
    }

    /** Where something may move while the prompt waits. */
    public Board board() {
        return board;
    }

    /** Takes this board from now on. */
    public void take(Board newBoard) {
        board = newBoard;
    }

    /** Tells this onlooker each time the line waits again, on the thread that reads it. */
    public void tell(Consumer<Scene> onlooker) {
        onlookers.add(onlooker);
    }

    void waits(Scene scene) {
        onlookers.forEach(onlooker -> onlooker.accept(scene));
    }

    /** What was shown or played last, the last of several, or null. */
    public Music lastMusic() {
        return lastMusic;
    }

    /** How it was last played, or null if it was only shown. */
    public Performance lastPerformance() {
        return lastPerformance;
    }

    /** Remembers what another stage does. */
    void rememberAs(Stage other) {
        lastMusic = other.lastMusic;
        lastPerformance = other.lastPerformance;
    }

    public void remember(Music shown) {
        lastMusic = shown;
        lastPerformance = null;
    }

    public void remember(Performance performance, List<Music> played) {
        lastMusic = played.get(played.size() - 1);
        lastPerformance = performance;
    }
}
