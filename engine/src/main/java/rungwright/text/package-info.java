/** Words for people: findings, programs and decisions as lines of text. */
package rungwright.text;
