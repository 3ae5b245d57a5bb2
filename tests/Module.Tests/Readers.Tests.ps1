# Files that LayerTools writes, read by two independent libraries: the tree, names, rectangles, switches and pixels must be what LayerTools reads itself.

BeforeDiscovery {
    Import-Module "$PSScriptRoot/Support/Readers.psm1" -Force
    $fixtures = (Get-ChildItem "$PSScriptRoot/../Fixtures/*" -Include '*.psd', '*.psb').Name
    # What the reader refuses in the original already, or is known to read otherwise there.
    $leftOut = @{
        'ag-psd' = @(
            'cmyk-8.psd', 'duotone.psd', 'lab-8.psd', 'magick-cmyk.psd', 'multichannel.psd' # colour modes
            'blend-mode-unknown.psd', 'magick-reversed-blend-key.psd' # blend modes it does not know
            'channels-56.psd', 'layer-channels-57.psd' # so many channels
            'mask-parameters-all.psd' # takes the parameters for a second mask
            'names-lone-surrogate.psd' # half a surrogate pair has no JSON to come back in
        )
        'psd-tools' = @(
            'blend-mode-unknown.psd', 'magick-reversed-blend-key.psd' # blend modes it does not know
            'groups-missing-closer.psd', 'groups-missing-opener.psd' # unbalanced groups
            'layer-channels-57.psd' # so many channels
            'layer-empty-length-0.psd' # channels of length 0
            'marks-above-7.psd' # marks it does not know
            'names-luni-trailing-nul.psd' # takes the counted NUL for a part of the name
            'names-lone-surrogate.psd' # half a surrogate pair has no JSON to come back in
        )
    }
    $readers = foreach ($reader in Find-OutsideReader) {
        @{ Reader = $reader; ReaderName = $reader.Name; Fixtures = @($fixtures | Where-Object { $_ -notin $leftOut[$reader.Name] } | ForEach-Object { @{ Fixture = $_ } }) }
    }
    $edits = 'blank', 'mirrored', 'moved', 'grouped', 'removed', 'switched', 'canvas', 'model renamed', 'model mirrored' | ForEach-Object { @{ Edit = $_ } }
}

BeforeAll {
    Import-Module "$PSScriptRoot/Support/Readers.psm1" -Force
    $fixtureFolder = (Resolve-Path "$PSScriptRoot/../Fixtures").Path
    $model = "$PSScriptRoot/../../../shared/models/figure-small.psd"

    $renamed = New-Item -ItemType Directory (Join-Path $TestDrive 'renamed')
    Get-ChildItem "$fixtureFolder/*" -Include '*.psd', '*.psb' | Get-LayerFile -WarningAction Ignore |
        Rename-Layer -NewName { "部品 $($_.LayerNumber)é" } -AllowDuplicate | Save-LayerFile -Destination $renamed -WarningAction Ignore > $null

    $edited = New-Item -ItemType Directory (Join-Path $TestDrive 'edited')
    $save = @{ WarningAction = 'Ignore'; ErrorAction = 'Stop' }
    $recipes = @{
        'blank' = { New-LayerFile "$edited/blank.psd" -Width 301 -Height 200 -Skeleton @save }
        'mirrored' = { Get-LayerFile "$fixtureFolder/mirror-arms.psd" | Copy-LayerMirror @save | Save-LayerFile "$edited/mirrored.psd" @save }
        'moved' = { Get-LayerFile "$fixtureFolder/groups-nested.psd" | Move-Layer -LayerNumber 3 -Before 'Figure/Head' @save | Save-LayerFile "$edited/moved.psd" @save }
        'grouped' = { Get-LayerFile "$fixtureFolder/rgb-8.psd" | New-LayerGroup 'New group' -Around '*' @save | Save-LayerFile "$edited/grouped.psd" @save }
        'removed' = { Get-LayerFile "$fixtureFolder/groups-nested.psd" | Remove-Layer -LayerNumber 2 @save | Save-LayerFile "$edited/removed.psd" @save }
        'switched' = { Get-LayerFile "$fixtureFolder/rgb-8.psd" | Set-Layer -LayerNumber 1 -Visible $false -Opacity 40 -Mark Red @save | Save-LayerFile "$edited/switched.psd" @save }
        'canvas' = { Get-LayerFile "$fixtureFolder/mask-outside.psd" | Set-LayerCanvas -Width 40 -Height 36 -Shift 3, -2 @save | Save-LayerFile "$edited/canvas.psd" @save }
        'model renamed' = { Get-LayerFile $model | Rename-Layer -Match '^' -Replacement '新 ' -AllowDuplicate @save | Save-LayerFile "$edited/model renamed.psd" @save }
        'model mirrored' = { Get-LayerFile $model | Copy-LayerMirror @save | Save-LayerFile "$edited/model mirrored.psd" @save }
    }
    $failures = @{}
    foreach ($name in $recipes.Keys) {
        if ($name -like 'model*' -and -not (Test-Path $model)) { continue }
        try { & $recipes[$name] > $null } catch { $failures[$name] = $_ }
    }
}

Describe 'What LayerTools writes, as <ReaderName> reads it' -ForEach $readers {
    It '<ReaderName> is here' {
        if ($Reader.Command) { return }
        if ($env:LAYERTOOLS_REQUIRE_READERS) { throw "$($Reader.Reason), and LAYERTOOLS_REQUIRE_READERS is set" }
        Set-ItResult -Skipped -Because $Reader.Reason
    }

    if (-not $Reader.Command) { return }

    Context 'fixtures with every layer renamed' {
        BeforeAll {
            $files = (Get-ChildItem $renamed).FullName
            $readings = Read-WithOutsideReader $Reader $files
        }

        It '<Fixture>' -ForEach $Fixtures {
            $path = Join-Path $renamed $Fixture
            $readings[$path].error | Should -BeNullOrEmpty
            $theirs = @(Format-Reading $readings[$path])
            $theirs | Should -BeExactly @(Format-OwnReading $path $ReaderName)
            $theirs.Count | Should -Be (Get-LayerFile "$fixtureFolder/$Fixture" -WarningAction Ignore).LayerCount
            $theirs | Where-Object { $_ -notmatch "^ *'部品 \d+é' " } | Should -BeNullOrEmpty -Because 'every layer was renamed'
        }
    }

    Context 'edits' {
        BeforeAll {
            $files = (Get-ChildItem $edited).FullName
            $readings = Read-WithOutsideReader $Reader $files
        }

        It '<Edit>' -ForEach $edits {
            if ($Edit -like 'model*' -and -not (Test-Path $model)) {
                Set-ItResult -Skipped -Because 'the model figure does not lie beside the repository'
                return
            }
            if ($failures[$Edit]) { throw $failures[$Edit] }
            $path = Join-Path $edited "$Edit.psd"
            $readings[$path].error | Should -BeNullOrEmpty
            @(Format-Reading $readings[$path]) | Should -BeExactly @(Format-OwnReading $path $ReaderName)
        }
    }
}

Describe 'A reflection, as psd-tools reads it' -ForEach ($readers | Where-Object { $_.ReaderName -eq 'psd-tools' -and $_.Reader.Command }) {
    It 'has the pixels of its original, flipped, at the reflected place' {
        if ($failures['mirrored']) { throw $failures['mirrored'] }
        $path = Join-Path $edited 'mirrored.psd'
        $reading = (Read-WithOutsideReader $Reader $path '--flipped')[$path]
        $before = (Get-LayerFile "$fixtureFolder/mirror-arms.psd").LayerCount
        $reading.layers.Count | Should -BeGreaterThan $before
        $axis = $reading.width / 2
        $pairs = 0
        foreach ($copy in Get-Layer $path -Side Right -Leaf) {
            $original = Get-Layer $path -Side Left -Leaf | Where-Object BaseName -EQ $copy.BaseName | Select-Object -First 1
            if (-not $original -or "$($copy.Kind)" -ne 'Pixel') { continue }
            $theirCopy = $reading.layers[$copy.LayerNumber - 1]
            $theirOriginal = $reading.layers[$original.LayerNumber - 1]
            $theirCopy.bounds[0] + $theirOriginal.bounds[2] | Should -Be (2 * $axis) -Because $copy.Name
            foreach ($channel in $theirOriginal.channels.PSObject.Properties) {
                $theirCopy.channels.($channel.Name).hash | Should -Be $channel.Value.flipped -Because "$($copy.Name), channel $($channel.Name)"
            }
            $pairs++
        }
        $pairs | Should -BeGreaterThan 0
    }
}
