/** YAML text in, spec or findings out; nothing else knows YAML. */
package rungwright.yaml;
