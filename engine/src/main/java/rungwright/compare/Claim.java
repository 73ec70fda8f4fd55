package rungwright.compare;

import java.util.List;
import rungwright.region.Box;

/**
 * What one answer of a program covers.
 *
 * @param answer the answer
 * @param boxes what it asks for, over joint axes
 * @param above the boxes of whatever speaks before it
 */
record Claim(Answer answer, List<Box> boxes, List<Box> above) {
    Claim {
        boxes = List.copyOf(boxes);
        above = List.copyOf(above);
    }
}
