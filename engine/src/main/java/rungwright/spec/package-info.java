/** The spec as the coach wrote it: names unresolved, places kept. */
package rungwright.spec;
