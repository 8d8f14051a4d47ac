/** Column sizes and volumes. Uses {@code text}, {@code reason}, {@code substance}, {@code strip}. */
package org.wickwise.column;
