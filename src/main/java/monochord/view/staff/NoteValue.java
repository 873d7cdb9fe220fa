package monochord.view.staff;

import java.util.Optional;
import monochord.theory.note.Beats;
import monochord.view.drawn.MusicSign;

/** A written value, and so how heads, flags and rests look. */
public enum NoteValue {
    WHOLE(Beats.of(4), "noteheadWhole", "noteheadSlashWhiteWhole", "restWhole"),
    HALF(Beats.of(2), "noteheadHalf", "noteheadSlashWhiteHalf", "restHalf"),
    QUARTER(Beats.ONE, "noteheadBlack", "noteheadSlashHorizontalEnds", "restQuarter"),
    EIGHTH(Beats.of(1, 2), "noteheadBlack", "noteheadSlashHorizontalEnds", "rest8th"),
    SIXTEENTH(Beats.of(1, 4), "noteheadBlack", "noteheadSlashHorizontalEnds", "rest16th"),
    THIRTY_SECOND(Beats.of(1, 8), "noteheadBlack", "noteheadSlashHorizontalEnds", "rest32nd"),
    /** No length is told: black heads without a stem. */
    FREE(Beats.ZERO, "noteheadBlack", "noteheadSlashHorizontalEnds", "restQuarter");

    private final Beats beats;
    private final String head;
    private final String slash;
    private final String rest;

    NoteValue(Beats beats, String head, String slash, String rest) {
        this.beats = beats;
        this.head = head;
        this.slash = slash;
        this.rest = rest;
    }

    /** Quarters; none where no length is told. */
    public Beats beats() {
        return beats;
    }

    MusicSign head() {
        return MusicSign.named(head);
    }

    MusicSign slash() {
        return MusicSign.named(slash);
    }

    MusicSign rest() {
        return MusicSign.named(rest);
    }

    boolean hasStem() {
        return this != WHOLE && this != FREE;
    }

    /** How many flags or beams it has. */
    public int flags() {
        return switch (this) {
            case EIGHTH -> 1;
            case SIXTEENTH -> 2;
            case THIRTY_SECOND -> 3;
            default -> 0;
        };
    }

    /** The sign on a stem that no beam joins. */
    Optional<MusicSign> flag(boolean up) {
        String way = up ? "Up" : "Down";
        return switch (this) {
            case EIGHTH -> Optional.of(MusicSign.named("flag8th" + way));
            case SIXTEENTH -> Optional.of(MusicSign.named("flag16th" + way));
            case THIRTY_SECOND -> Optional.of(MusicSign.named("flag32nd" + way));
            default -> Optional.empty();
        };
    }
}
