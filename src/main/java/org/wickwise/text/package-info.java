/** Reading YAML with line and column kept, located problems, near misses. Uses no other room. */
package org.wickwise.text;
