package monochord.view.staff;

/** A rectangle in staff spaces; {@code top} is the smaller y, for y runs down. */
public record Box(double left, double top, double right, double bottom) {
    public Box moved(double right, double down) {
        return new Box(left + right, top + down, this.right + right, bottom + down);
    }

    /** The smallest rectangle around both. */
    public Box around(Box other) {
        return new Box(
                Math.min(left, other.left),
                Math.min(top, other.top),
                Math.max(right, other.right),
                Math.max(bottom, other.bottom));
    }

    /** Whether some height belongs to both, or would if one grew by {@code room} at each end. */
    boolean isBeside(Box other, double room) {
        return top - room < other.bottom && other.top < bottom + room;
    }

    double width() {
        return right - left;
    }
}
