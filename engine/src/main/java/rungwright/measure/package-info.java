/** What a coach can measure, and exactly which values it can take. */
package rungwright.measure;
