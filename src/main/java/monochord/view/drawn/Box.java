package monochord.view.drawn;

/** A rectangle; {@code top} is the smaller y, for y runs down. */
public record Box(double left, double top, double right, double bottom) {
    public Box moved(double right, double down) {
        return new Box(left + right, top + down, this.right + right, bottom + down);
    }

    /** Made larger or smaller from the point 0, 0, and then moved. */
    public Box placed(double scale, double right, double down) {
        return new Box(left * scale + right, top * scale + down, this.right * scale + right, bottom * scale + down);
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
    public boolean isBeside(Box other, double room) {
        return top - room < other.bottom && other.top < bottom + room;
    }

    public double width() {
        return right - left;
    }

    public double height() {
        return bottom - top;
    }
}
