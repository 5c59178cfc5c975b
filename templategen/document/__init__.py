"""A document as data: blocks of words and pictures, which paper, plain text and a page for the screen all say alike."""
