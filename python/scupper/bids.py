"""Bids for a contract: checked, beside each other, and what is out of line."""

from scupper.bid_review import BidReview, estimate_accuracy, from_frames, review

__all__ = ["BidReview", "estimate_accuracy", "from_frames", "review"]
