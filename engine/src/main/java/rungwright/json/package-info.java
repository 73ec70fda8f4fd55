/** JSON in and out; nothing else knows JSON. */
package rungwright.json;
