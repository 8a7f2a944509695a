// The typeface of the sheets among the page's own files: one set for preview, print and PDF.

import regular from "@expo-google-fonts/ibm-plex-sans-condensed/400Regular/IBMPlexSansCondensed_400Regular.ttf?url";
import semiBold from "@expo-google-fonts/ibm-plex-sans-condensed/600SemiBold/IBMPlexSansCondensed_600SemiBold.ttf?url";
import bold from "@expo-google-fonts/ibm-plex-sans-condensed/700Bold/IBMPlexSansCondensed_700Bold.ttf?url";
import type { FontAddresses } from "./maker.ts";

export const SHEET_FONTS: FontAddresses = { 400: regular, 600: semiBold, 700: bold };
