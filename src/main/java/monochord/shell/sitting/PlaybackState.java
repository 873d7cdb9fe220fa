package monochord.shell.sitting;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import monochord.harmony.Music;
import monochord.score.Piece;
import monochord.shell.line.LineState;
import monochord.shell.playback.Breaks;
import monochord.shell.playback.Ear;
import monochord.shell.playback.LiveStrip;
import monochord.shell.playback.Playable;
import monochord.shell.rehearsal.KeyFeed;
import monochord.shell.storage.Settings;
import monochord.sound.Bank;
import monochord.sound.Directions;
import monochord.sound.Patch;
import monochord.sound.Performance;
import monochord.theory.Key;
import monochord.theory.note.NoteName;
import monochord.theory.note.Unreadable;
import monochord.view.Statement;
import monochord.view.Title;

/** Where music is shown and heard: what plays, what moves with it, how it is played, and what was there last. */
public final class PlaybackState {
    /** The names under which directions are settled for good. */
    public static final String TEMPO = "tempo";

    public static final String RIGHT = "patch.right";
    public static final String LEFT = "patch.left";
    /** The path of a bank; empty for the program's own. */
    public static final String BANK = "bank";

    private final Ear ear;
    private final KeyFeed keys = new KeyFeed();
    private final Settings settings;
    private final Breaks breaks;
    private final List<Consumer<LineState>> onlookers = new CopyOnWriteArrayList<>();
    private LiveStrip board = LiveStrip.none();
    private Directions directions;
    private Music lastMusic;
    private Performance lastPerformance;
    private Playable last;
    private Directions lastDirections;
    private List<Playable> versions = List.of();
    private AbComparison contest;

    PlaybackState(Ear ear, Settings settings, Breaks breaks) {
        this.ear = ear;
        this.settings = settings;
        this.breaks = breaks;
    }

    /** When whoever sits here needs a rest. */
    public Breaks breaks() {
        return breaks;
    }

    /** What is played at the connected keyboard. */
    public KeyFeed keys() {
        return keys;
    }

    public Ear ear() {
        return ear;
    }

    /** Where something may move while the prompt waits. */
    public LiveStrip board() {
        return board;
    }

    /** Takes this board from now on; what the ear has to say in the middle of a sound is said there too. */
    public void take(LiveStrip newBoard) {
        board = newBoard;
        ear.tells(line -> newBoard.say(Statement.of(line)));
    }

    /** How things are played when nothing is said. */
    public Directions directions() {
        if (directions == null) {
            directions = settled();
        }
        return directions;
    }

    private Directions settled() {
        Directions usual = Directions.USUAL;
        int tempo = settings.get(TEMPO)
                .filter(said -> said.matches("[0-9]{1,3}"))
                .map(Integer::parseInt)
                .filter(said -> said >= Performance.SLOWEST && said <= Performance.FASTEST)
                .orElse(usual.tempo());
        return usual.at(tempo)
                .with(patch(LEFT), patch(RIGHT))
                .from(keptBank().filter(Files::isReadable).map(Bank::known));
    }

    /** Where the bank is, or was, that is settled for good. */
    public Optional<Path> keptBank() {
        try {
            return settings.get(BANK).filter(path -> !path.isEmpty()).map(Path::of);
        } catch (InvalidPathException unknown) {
            return Optional.empty();
        }
    }

    private Patch patch(String hand) {
        try {
            return settings.get(hand).map(Patch::parse).orElse(Patch.PIANO);
        } catch (Unreadable unknown) {
            return Patch.PIANO;
        }
    }

    /** From now on things are played so when nothing is said; what was played last, too, when it comes again. */
    public void settle(Directions now) {
        directions = now;
        if (lastDirections != null) {
            lastDirections =
                    lastDirections.at(now.tempo()).with(now.left(), now.right()).from(now.bank());
        }
    }

    /** How what was there last was played, or would be. */
    public Directions lastDirections() {
        return lastDirections == null ? directions() : lastDirections;
    }

    /** Tells this onlooker each time the line waits again, on the thread that reads it. */
    public void tell(Consumer<LineState> onlooker) {
        onlookers.add(onlooker);
    }

    void waits(LineState scene) {
        breaks.note();
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
    void rememberAs(PlaybackState other) {
        lastMusic = other.lastMusic;
        lastPerformance = other.lastPerformance;
        last = other.last;
        lastDirections = other.lastDirections;
        versions = other.versions;
        contest = other.contest;
    }

    /** What was shown or played last, as it can be played again. */
    public Optional<Playable> last(Key key) {
        return last != null ? Optional.of(last) : Optional.ofNullable(lastMusic).map(music -> Playable.of(music, key));
    }

    /** The plain and the improved version of what was there last, where there are two; else none. */
    public List<Playable> versions() {
        return versions;
    }

    /** What was compared, if nothing has been shown or played since. */
    public Optional<AbComparison> contest() {
        return Optional.ofNullable(contest);
    }

    public void remember(Music shown) {
        clear();
        lastMusic = shown;
    }

    /** Played as it stands, whatever is said about patterns. */
    public void remember(Performance performance, List<Music> played) {
        clear();
        lastMusic = played.get(played.size() - 1);
        lastPerformance = performance;
        Key key = performance.key().orElse(Key.major(NoteName.C));
        last = new Playable(Title.of(lastMusic), Piece.of(performance.score()), key, List.of());
        lastDirections = directions().at(performance.tempo()).with(performance.left(), performance.right());
    }

    /** Something that can be played, though it has not been. */
    public void remember(Playable take) {
        clear();
        last = take;
    }

    /** The same, where it has a plain and an improved version. */
    public void remember(Playable take, Playable plain, Playable improved) {
        remember(take);
        versions = List.of(plain, improved);
    }

    /** Something that was played. */
    public void remember(Playable take, Directions played) {
        List<Playable> still = take.equals(last) ? versions : List.of();
        clear();
        last = take;
        versions = still;
        lastDirections = played;
    }

    void remember(AbComparison compared) {
        List<Playable> takes = compared.takes();
        clear();
        last = takes.get(takes.size() - 1);
        lastDirections = compared.directions();
        contest = compared;
    }

    private void clear() {
        lastMusic = null;
        lastPerformance = null;
        last = null;
        lastDirections = null;
        versions = List.of();
        contest = null;
    }
}
