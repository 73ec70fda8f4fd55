package rungwright.program;

import rungwright.measure.WorkedOut;

/** A worked-out measure, and how it stands in the formula of another. */
record WorkedPart(WorkedOut measure, FormulaPart part) {
}
